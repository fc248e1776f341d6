package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.journey.Drafts;
import org.steadwork.journey.Guest;
import org.steadwork.journey.PackagedApplication;

/** The packaged demo: a draft that was saved outlives a killed process, and the command knows a file that was signed. */
@Tag("long")
class LetterKillIT {

    private static final Map<String, String> DEMO = Map.of("quarkus.profile", "demo");

    private Path folder;

    @BeforeEach
    void makeTheDataFolder() throws IOException {
        folder = Files.createTempDirectory("steadwork-kill");
    }

    @AfterEach
    void removeTheDataFolder() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        }
    }

    @Test
    void aSavedDraftOutlivesAKillAndTheCommandKnowsASignedFile() throws Exception {
        String words = "Numb all day for a week, written just before the kill.";
        String letter;
        byte[] signed;
        try (PackagedApplication application = PackagedApplication.startKeeping(folder, DEMO)) {
            Guest guest = signedIn(application);
            letter = Drafts.openLetter(guest);
            guest.open(letter).expect(200).formWithButton("Save as draft").set("text-findings", words).send().expect(200);
            signed = signedFile(guest);
            ProcessHandle process = ProcessHandle.of(application.pid()).orElseThrow();
            process.destroyForcibly();
            process.onExit().get(20, TimeUnit.SECONDS);
        }
        try (PackagedApplication application = PackagedApplication.startKeeping(folder, DEMO)) {
            Guest guest = signedIn(application);
            assertEquals(words, guest.open(letter).expect(200).page().selectFirst("[name=text-findings]").wholeText().strip());
        }
        Path file = folder.resolve("letter.pdf");
        Files.write(file, signed);
        assertEquals(0, command(file), "a file signed here");
        signed[signed.length / 2] ^= 1;
        Files.write(file, signed);
        assertEquals(1, command(file), "the same file with one bit changed");
    }

    private static Guest signedIn(PackagedApplication application) {
        Guest guest = new Guest(application.address());
        guest.open("/sign-in").expect(200).formWithButton("Sign in").set("userName", "tamsin").set("password", "desk-and-daylight").send().expect(200);
        return guest;
    }

    private static byte[] signedFile(Guest guest) {
        for (int number = 1; number < 20; number++) {
            guest.open("/cases/" + number + "/letters/1/file/letter.pdf");
            if (guest.status() == 200) {
                return guest.body().clone();
            }
        }
        throw new AssertionError("no signed letter in the demo");
    }

    private int command(Path file) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-Dsteadwork.data-folder=" + folder.resolve("data"), "-jar", System.getProperty("steadwork.jar"), "demo", "check-letter", file.toString())
                .redirectErrorStream(true).redirectOutput(folder.resolve("command.log").toFile()).start();
        assertTrue(process.waitFor(90, TimeUnit.SECONDS), "the command ends");
        return process.exitValue();
    }
}
