package org.steadwork.account;

import io.quarkus.test.junit.QuarkusTest;

@QuarkusTest
class AuditTrailTest extends AuditTrailContract {
}
