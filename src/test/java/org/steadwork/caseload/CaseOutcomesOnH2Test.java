package org.steadwork.caseload;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;

@QuarkusTest
@TestProfile(OutcomesOnH2.class)
class CaseOutcomesOnH2Test extends CaseOutcomesContract {
}
