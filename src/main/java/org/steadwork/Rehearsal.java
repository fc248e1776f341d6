package org.steadwork;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.QuarkusApplication;
import io.quarkus.vertx.http.HttpServer;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.HttpURLConnection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.ConfigProvider;
import org.steadwork.storage.StartCheck;

/**
 * The word {@code rehearse}: starts on a new folder as a clinic would, opens the sign-in page once, and ends. The build does so to
 * record which classes a start needs, for the archive that makes the next starts shorter.
 */
public class Rehearsal implements QuarkusApplication {

    @Inject
    HttpServer server;

    static void start() {
        Path folder = newFolder();
        System.setProperty("steadwork.data-folder", folder.toString());
        System.setProperty("quarkus.http.port", "0");
        StartCheck.runForServer(ConfigProvider.getConfig());
        Quarkus.run(Rehearsal.class, (status, problem) -> {
            remove(folder);
            System.exit(status);
        });
    }

    @Override
    public int run(String... words) throws IOException {
        HttpURLConnection page = (HttpURLConnection) server.getLocalBaseUri().resolve("/sign-in").toURL().openConnection();
        page.getInputStream().readAllBytes();
        return page.getResponseCode() == HttpURLConnection.HTTP_OK ? 0 : 1;
    }

    private static Path newFolder() {
        try {
            return Files.createTempDirectory("steadwork-rehearsal");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void remove(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            for (Path one : deepestFirst) {
                Files.delete(one);
            }
        } catch (IOException e) {
            System.err.println("The folder of the rehearsal could not be removed: " + e.getMessage());
        }
    }
}
