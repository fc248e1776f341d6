package org.steadwork.demo;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;

@QuarkusTest
@TestProfile(OnH2.class)
class DemoClinicOnH2Test extends DemoClinicContract {
}
