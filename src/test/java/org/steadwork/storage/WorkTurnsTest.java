package org.steadwork.storage;

import io.quarkus.test.junit.QuarkusTest;

/** Turns of work on H2. */
@QuarkusTest
class WorkTurnsTest extends WorkTurnsContract {
}
