package org.steadwork.letter;

import io.quarkus.test.junit.QuarkusTest;

@QuarkusTest
class SignedLetterTest extends SignedLetterContract {
}
