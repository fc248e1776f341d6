package org.steadwork.caseload;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;

@QuarkusTest
@TestProfile(CaseloadOnPostgres.class)
class CaseOutcomesOnPostgresTest extends CaseOutcomesContract {
}
