package org.steadwork.account;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.junit.jupiter.api.Tag;
import org.steadwork.storage.EmptyOnPostgres;

@QuarkusTest
@Tag("own-clinic")
@TestProfile(EmptyOnPostgres.class)
class AuditTrailOnPostgresTest extends AuditTrailContract {
}
