package org.steadwork.demo;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.junit.jupiter.api.Tag;

@QuarkusTest
@Tag("long")
@Tag("own-clinic")
@TestProfile(OnH2.class)
class DemoClinicOnH2Test extends DemoClinicContract {
}
