package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.DemoPassword;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.journey.Guest;
import org.steadwork.journey.PackagedApplication;

/**
 * The packaged application, started as a user starts it. One invented case is walked through it from the first account to the
 * signed letter; for each day the application is started anew on the same data folder, so what one start stored the next must
 * find. The demo starts, loads its cases and refuses a clinic that is not its own.
 */
class PackagedIT {

    private static final String CASE = "demo-13";
    private static final Pattern FIRST_RUN = Pattern.compile("/first-run\\?key=[\\w-]+");

    private Path folder;
    private PackagedApplication running;
    private LocalDateTime now;

    @BeforeEach
    void makeTheDataFolder() throws IOException {
        folder = Files.createTempDirectory("steadwork-walk");
    }

    @AfterEach
    void stop() throws IOException {
        if (running != null) {
            running.close();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        }
    }

    @Test
    void oneCaseIsWalkedFromTheFirstAccountToTheLastVisit() {
        Set<String> known = new HashSet<>();
        new VignetteWalk(CASE, (moment, account) -> {
            if (!moment.equals(now)) {
                startAt(moment);
            }
            if (known.isEmpty()) {
                makeTheFirstAccount(account);
                known.add(account);
            }
            return VignetteWalk.signIn(running.address(), account, DemoPassword.VALUE);
        }).walk();
    }

    @Test
    void theDemoStartsWithItsCasesAndNeverOpensAsARealClinic() {
        running = PackagedApplication.startKeeping(folder, Map.of("quarkus.profile", "demo"));
        Guest guest = VignetteWalk.signIn(running.address(), "tamsin", DemoPassword.VALUE);
        assertTrue(guest.open("/").expect(200).words().contains("16 Dec 2030"), guest.words());
        running.close();
        IllegalStateException refused = assertThrows(IllegalStateException.class,
                () -> PackagedApplication.startKeeping(folder, Map.of("steadwork.database", "demo")));
        assertTrue(refused.getMessage().contains("invented demo clinic"), refused.getMessage());
    }

    private void startAt(LocalDateTime moment) {
        if (running != null) {
            running.close();
        }
        running = PackagedApplication.startKeeping(folder, Map.of("steadwork.demo-now", moment.toString(), "steadwork.clinic.name",
                "Alderwick Occupational Physiotherapy", "steadwork.clinic.phone", "01632 960100"));
        now = moment;
    }

    private void makeTheFirstAccount(String userName) {
        Matcher link = FIRST_RUN.matcher(running.log());
        assertTrue(link.find(), () -> "no first-run link in " + running.log());
        Entry account = Content.yaml("demo/clinic.yaml").entries("accounts").stream().filter(a -> a.text("user_name").equals(userName)).findFirst().orElseThrow();
        new Guest(running.address()).open(link.group()).expect(200).formWithButton("Make the account").set("userName", userName)
                .set("fullName", account.text("name")).set("displayName", account.text("short_name")).set("registration", account.text("registration"))
                .set("password", DemoPassword.VALUE).set("passwordAgain", DemoPassword.VALUE).send().expect(200);
    }
}
