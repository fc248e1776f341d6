package org.steadwork.account;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.steadwork.letter.LettersOnPostgres;

@QuarkusTest
@TestProfile(LettersOnPostgres.class)
class AuditTrailOnPostgresTest extends AuditTrailContract {
}
