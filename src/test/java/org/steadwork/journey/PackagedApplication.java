package org.steadwork.journey;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The packaged product, started as a user starts it: {@code java -jar}, a data folder of its own, a free port. What the
 * tests see this way is the jar, not the class path of the build.
 */
public final class PackagedApplication implements AutoCloseable {

    private static final Pattern LISTENING = Pattern.compile("Listening on: (https?://[^\\s/]+:\\d+)");
    private static final Duration PATIENCE = Duration.ofSeconds(120);

    private final Process process;
    private final Path folder;
    private final Path log;
    private final URI address;
    private final boolean keepsFolder;

    private PackagedApplication(Process process, Path folder, Path log, URI address, boolean keepsFolder) {
        this.process = process;
        this.folder = folder;
        this.log = log;
        this.address = address;
        this.keepsFolder = keepsFolder;
    }

    /** Starts the jar with an empty data folder; returns when it answers. {@code settings} become {@code -D} options. */
    public static PackagedApplication start(Map<String, String> settings) {
        try {
            return start(jar(), Files.createTempDirectory("steadwork-packaged"), settings, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Starts the jar on a folder that may hold a clinic already, and leaves it there when closed. */
    public static PackagedApplication startKeeping(Path folder, Map<String, String> settings) {
        try {
            return start(jar(), folder, settings, true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As {@link #startKeeping(Path, Map)}, from another packaged jar, such as the one built for PostgreSQL. */
    public static PackagedApplication startKeeping(Path jar, Path folder, Map<String, String> settings) {
        try {
            return start(jar, folder, settings, true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PackagedApplication start(Path jar, Path folder, Map<String, String> settings, boolean keepsFolder) throws IOException {
        Path log = folder.resolve("start.log");
        Map<String, String> all = new TreeMap<>(settings);
        all.putIfAbsent("quarkus.http.port", "0");
        all.putIfAbsent("steadwork.data-folder", folder.resolve("data").toString());
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options(jar));
        all.forEach((key, value) -> command.add("-D" + key + "=" + value));
        command.add("-jar");
        command.add(jar.toString());
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
        return new PackagedApplication(process, folder, log, awaitAddress(process, log), keepsFolder);
    }

    /** The options that README starts with, with the class archive that belongs to this jar. */
    private static List<String> options(Path jar) {
        try (Stream<String> lines = Files.lines(Path.of("start.options"))) {
            return lines.filter(line -> line.startsWith("-")).map(line -> line.startsWith("-XX:SharedArchiveFile=") ? "-XX:SharedArchiveFile=" + jar.resolveSibling("classes.jsa") : line)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Path jar() {
        String jar = System.getProperty("steadwork.jar");
        if (jar == null || !Files.isRegularFile(Path.of(jar))) {
            throw new IllegalStateException("No packaged application at '" + jar + "': build it with ./mvnw package, "
                    + "or name it with -Dsteadwork.jar=target/quarkus-app/quarkus-run.jar");
        }
        return Path.of(jar);
    }

    private static URI awaitAddress(Process process, Path log) throws IOException {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (System.nanoTime() < end) {
            Matcher line = LISTENING.matcher(Files.readString(log));
            if (line.find()) {
                return URI.create(line.group(1));
            }
            if (!process.isAlive()) {
                throw new IllegalStateException("The packaged application stopped while starting:\n" + Files.readString(log));
            }
            pause();
        }
        process.destroyForcibly();
        throw new IllegalStateException("The packaged application did not listen in time:\n" + Files.readString(log));
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(5);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    public URI address() {
        return address;
    }

    /** Ends the process at once, as a power cut would; returns when it is gone. */
    public void kill() {
        process.destroyForcibly();
        try {
            process.waitFor();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Asks the process to end and ends it at once after these milliseconds, as a machine does that is going down; returns when it is gone. */
    public void killWhileEnding(int millis) {
        process.destroy();
        try {
            process.waitFor(millis, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        kill();
    }

    public long pid() {
        return process.pid();
    }

    /** Returns everything the process has written so far. */
    public String log() {
        try {
            return Files.readString(log);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(20, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor();
            }
            if (keepsFolder) {
                return;
            }
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder()).forEach(PackagedApplication::delete);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
