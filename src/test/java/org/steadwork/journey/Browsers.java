package org.steadwork.journey;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.CLI;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.PlaywrightException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Finds a real Chromium for the journeys: {@code $STEADWORK_CHROMIUM}, else the system's, else one that it installs, and
 * says so. Without any browser it fails with one line that says what to install; a journey is never skipped.
 */
final class Browsers {

    static final String WHAT_TO_INSTALL = "No Chromium for the browser journeys: install it (Debian: apt-get install chromium) "
            + "or name one with STEADWORK_CHROMIUM=/path/to/chromium";

    private static final List<String> FLAGS = List.of("--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
            "--disable-background-networking", "--disable-component-update", "--disable-sync");
    private static final List<String> USUAL_PLACES = List.of("/usr/bin/chromium", "/usr/bin/chromium-browser",
            "/usr/bin/google-chrome", "/snap/bin/chromium");

    private Browsers() {
    }

    /** Starts Playwright without letting it fetch browsers of its own accord. */
    static Playwright playwright() {
        return Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    }

    static Browser chromium(Playwright playwright) {
        BrowserType.LaunchOptions options = new BrowserType.LaunchOptions().setArgs(FLAGS);
        Path found = executable();
        if (found != null) {
            return playwright.chromium().launch(options.setExecutablePath(found));
        }
        try {
            return playwright.chromium().launch(options);
        } catch (PlaywrightException e) {
            throw new AssertionError(WHAT_TO_INSTALL, e);
        }
    }

    /** Returns the browser to start, or null when Playwright is to use the one it has downloaded. */
    private static Path executable() {
        String named = System.getenv("STEADWORK_CHROMIUM");
        if (named != null && !named.isBlank()) {
            if (!Files.isExecutable(Path.of(named))) {
                throw new AssertionError("STEADWORK_CHROMIUM names " + named + ", which cannot be run");
            }
            return Path.of(named);
        }
        return installed();
    }

    /** Finds the system's browser or installs one, a process at a time: the journeys run in two, and one must not start what the other has half installed. */
    private static Path installed() {
        try (FileChannel turn = FileChannel.open(Path.of(System.getProperty("java.io.tmpdir"), "steadwork-browser.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock mine = turn.lock()) {
            return usual() != null ? usual() : fetched();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path fetched() {
        if (Files.exists(Path.of("/etc/debian_version")) && "root".equals(System.getProperty("user.name"))) {
            say("No Chromium found: installing the package 'chromium' with apt-get");
            if (run("apt-get", "update") && run("apt-get", "install", "-y", "--no-install-recommends", "chromium") && usual() != null) {
                return usual();
            }
        }
        say("No Chromium found: letting Playwright download its own");
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        if (!run(java, "-cp", System.getProperty("java.class.path"), CLI.class.getName(), "install", "chromium")) {
            throw new AssertionError(WHAT_TO_INSTALL);
        }
        return null;
    }

    private static Path usual() {
        return USUAL_PLACES.stream().map(Path::of).filter(Files::isExecutable).findFirst().orElse(null);
    }

    private static boolean run(String... command) {
        try {
            Process process = new ProcessBuilder(command).inheritIO().start();
            if (!process.waitFor(10, TimeUnit.MINUTES)) {
                process.destroyForcibly();
                return false;
            }
            return process.exitValue() == 0;
        } catch (IOException e) {
            say(String.join(" ", command) + " cannot be run: " + e.getMessage());
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static void say(String words) {
        System.err.println("[journeys] " + words);
    }
}
