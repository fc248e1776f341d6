package org.steadwork.diary;

import io.quarkus.test.junit.QuarkusTest;

@QuarkusTest
class DiaryLawTest extends DiaryLawContract {
}
