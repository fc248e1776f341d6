package org.steadwork.storage;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.junit.jupiter.api.Tag;

/** Turns of work on a real PostgreSQL. */
@QuarkusTest
@Tag("own-clinic")
@TestProfile(EmptyOnPostgres.class)
class WorkTurnsOnPostgresTest extends WorkTurnsContract {
}
