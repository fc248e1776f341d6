package org.steadwork.letter;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;

@QuarkusTest
@TestProfile(LettersOnPostgres.class)
class SignedLetterOnPostgresTest extends SignedLetterContract {
}
