package org.steadwork.journey;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * One run of the packaged jar to its end: a command, or a start that is refused.
 *
 * @param output everything it wrote, to both streams
 */
public record PackagedCommand(int exit, String output) {

    private static final int PATIENCE_SECONDS = 120;

    public static PackagedCommand run(Map<String, String> settings, String... words) {
        return run(PackagedApplication.jar(), settings, words);
    }

    public static PackagedCommand run(Path jar, Map<String, String> settings, String... words) {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC"));
        settings.forEach((key, value) -> command.add("-D" + key + "=" + value));
        command.addAll(List.of("-jar", jar.toString()));
        command.addAll(List.of(words));
        try {
            Path log = Files.createTempFile("steadwork-command", ".log");
            Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
            boolean ended = process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
            process.destroyForcibly().waitFor();
            String output = Files.readString(log).replaceAll("Picked up JAVA_TOOL_OPTIONS.*\\R", "");
            Files.delete(log);
            assertTrue(ended, () -> "it went on: " + String.join(" ", words) + "\n" + output);
            return new PackagedCommand(process.exitValue(), output);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Refused: with these words, without the inside of the program. */
    public void assertRefused(String words) {
        assertTrue(exit != 0, output);
        assertTrue(output.contains(words), output);
        assertTrue(!output.contains("\tat ") && !output.contains("Exception"), output);
    }
}
