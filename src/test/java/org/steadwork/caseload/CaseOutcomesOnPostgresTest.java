package org.steadwork.caseload;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.junit.jupiter.api.Tag;
import org.steadwork.storage.EmptyOnPostgres;

@QuarkusTest
@Tag("own-clinic")
@TestProfile(EmptyOnPostgres.class)
class CaseOutcomesOnPostgresTest extends CaseOutcomesContract {
}
