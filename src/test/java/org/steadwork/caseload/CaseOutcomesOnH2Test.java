package org.steadwork.caseload;

import io.quarkus.test.junit.QuarkusTest;

/** The rows of the cases on H2, in the clinic that the tests share. */
@QuarkusTest
class CaseOutcomesOnH2Test extends CaseOutcomesContract {
}
