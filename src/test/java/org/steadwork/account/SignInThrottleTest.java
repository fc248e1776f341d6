package org.steadwork.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.steadwork.account.password.PasswordHash;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** Guessing is slowed down, and nobody is locked out by it. */
@QuarkusTest
class SignInThrottleTest {

    @Inject
    TestAccounts accounts;

    @Inject
    SignInThrottle throttle;

    @Inject
    SignIns signIns;

    @Test
    void manyWrongTriesFromOneAddressThenTheRightPersonFromAnother() {
        Account account = accounts.fresh(Role.CLINICIAN);
        String attacker = SignInTest.somewhere();
        List<Integer> answers = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            answers.add(SignInTest.wrong(attacker, account.userName(), "wrong password no. " + i).status());
        }
        assertEquals(List.of(422, 422, 422, 422, 422, 429), answers.subList(0, 6));
        assertTrue(answers.stream().filter(status -> status == 422).count() < 12, () -> answers.toString());
        Visitor late = SignInTest.wrong(attacker, account.userName(), TestAccounts.PASSWORD);
        assertEquals(429, late.status(), "the right one too has to wait there");
        assertTrue(Integer.parseInt(late.answer().header("Retry-After")) > 0);
        assertFalse(late.page().text().contains(TestAccounts.PASSWORD));
        SignInTest.signedIn(account, TestAccounts.PASSWORD);
    }

    @Test
    void whoWasSignedInAtAnAddressIsNotShutOutByOthersThere() {
        Account account = accounts.fresh(Role.CLINICIAN);
        String clinic = SignInTest.somewhere();
        assertEquals(200, SignInTest.wrong(clinic, account.userName(), TestAccounts.PASSWORD).status());
        for (int i = 0; i < 40; i++) {
            throttle.take("somebody else " + i, clinic);
        }
        assertEquals(429, SignInTest.wrong(clinic, "yet another", "wrong wrong wrong").status(), "the address has to wait");
        assertEquals(200, SignInTest.wrong(clinic, account.userName(), TestAccounts.PASSWORD).status(), "but not for whom it is known");
    }

    @Test
    void guessingFromManyAddressesIsSlowAfterAHundredButNotWhereOneIsKnown() {
        Account account = accounts.fresh(Role.CLINICIAN);
        String clinic = SignInTest.somewhere();
        assertEquals(200, SignInTest.wrong(clinic, account.userName(), TestAccounts.PASSWORD).status());
        int taken = 0;
        for (int i = 0; i < 200; i++) {
            taken += throttle.take(account.userName(), "203.0.113." + i).isZero() ? 1 : 0;
        }
        assertEquals(100, taken);
        Duration wait = throttle.take(account.userName(), "203.0.113.250");
        assertTrue(!wait.isZero() && wait.compareTo(Duration.ofSeconds(30)) <= 0, "at a new place, half a minute at most: " + wait);
        assertEquals(200, SignInTest.wrong(clinic, account.userName(), TestAccounts.PASSWORD).status());
    }

    @Test
    void aNameThatNobodyHasIsSlowedDownAlike() {
        String attacker = SignInTest.somewhere();
        List<Integer> answers = Stream.generate(() -> SignInTest.wrong(attacker, "no-such-name-at-all", "wrong wrong wrong").status()).limit(7).toList();
        assertEquals(List.of(422, 422, 422, 422, 422, 429, 429), answers);
    }

    @Test
    void manyTriesAtOneMomentGainNothing() {
        String attacker = SignInTest.somewhere();
        String name = accounts.fresh(Role.CLINICIAN).userName();
        assertTrue(throttle.take(name, attacker).isZero());
        ExecutorService atOnce = Executors.newFixedThreadPool(8);
        List<CompletableFuture<Duration>> tries = Stream.generate(() -> CompletableFuture.supplyAsync(() -> throttle.take(name, attacker), atOnce))
                .limit(40).toList();
        long taken = tries.stream().map(CompletableFuture::join).filter(Duration::isZero).count();
        atOnce.shutdown();
        assertEquals(4, taken, "four more of the five free ones");
    }

    /** The work for a wrong password of somebody is that for a name of nobody; medians of many, since one alone says nothing. */
    @Test
    void theTimeDoesNotTellWhetherANameExists() {
        Account account = accounts.fresh(Role.CLINICIAN);
        signIns.check(account.userName(), "warm up the compiler");
        List<Long> somebody = new ArrayList<>();
        List<Long> nobody = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            String password = "wrong wrong wrong " + i;
            somebody.add(nanos(() -> signIns.check(account.userName(), password)));
            nobody.add(nanos(() -> signIns.check("nobody-of-this-name", password)));
        }
        double ratio = median(somebody) / median(nobody);
        assertTrue(ratio > 0.75 && ratio < 1.33, "somebody takes " + ratio + " times as long as nobody");
        double hashing = median(LongStream.range(0, 100).mapToObj(i -> nanos(() -> PasswordHash.of("as much work as this " + i, 4))).toList());
        assertTrue(median(nobody) > 0.5 * hashing, "the hash is made for nobody too");
    }

    private static long nanos(Supplier<?> work) {
        long began = System.nanoTime();
        work.get();
        return System.nanoTime() - began;
    }

    private static double median(List<Long> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }
}
