package org.steadwork.letter;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.steadwork.demo.OnPostgres;

@QuarkusTest
@TestProfile(OnPostgres.class)
class SignedLetterOnPostgresTest extends SignedLetterContract {
}
