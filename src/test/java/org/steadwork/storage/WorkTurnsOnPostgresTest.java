package org.steadwork.storage;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.steadwork.demo.OnPostgres;

/** Turns of work on a real PostgreSQL. */
@QuarkusTest
@TestProfile(OnPostgres.class)
class WorkTurnsOnPostgresTest extends WorkTurnsContract {
}
