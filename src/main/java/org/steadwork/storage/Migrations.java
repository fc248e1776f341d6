package org.steadwork.storage;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.ResourceProvider;
import org.flywaydb.core.api.resource.LoadableResource;

/** The migrations this program carries, for commands that run without the server: they bring an empty database to any version up to the last. */
public final class Migrations {

    private static final String FOLDER = "db/migration";
    private static final int SECONDS_FOR_ANOTHER_TO_MIGRATE = 1800;

    private final Map<String, String> scripts;

    private Migrations(Map<String, String> scripts) {
        this.scripts = scripts;
    }

    /** Reads them from the jar, or the folder of classes, that holds this class. */
    public static Migrations carried() {
        try {
            Path place = Path.of(Migrations.class.getProtectionDomain().getCodeSource().getLocation().toURI());
            if (Files.isDirectory(place)) {
                return new Migrations(read(place.resolve(FOLDER)));
            }
            try (FileSystem jar = FileSystems.newFileSystem(URI.create("jar:" + place.toUri()), Map.of())) {
                return new Migrations(read(jar.getPath(FOLDER)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The migrations of this program cannot be read", e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Map<String, String> read(Path folder) throws IOException {
        Map<String, String> scripts = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(one -> one.toString().endsWith(".sql")).toList()) {
                scripts.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return scripts;
    }

    /** Returns the version of the last one. */
    public String last() {
        return scripts.keySet().stream().map(name -> name.substring(1, name.indexOf("__")).replace('_', '.')).reduce((one, other) ->
                SchemaVersion.compare(one, other) > 0 ? one : other).orElseThrow();
    }

    /** Brings a database to a version; what it has already is left. */
    public void migrate(String url, String user, String password, String version) {
        Flyway.configure().dataSource(url, user, password).resourceProvider(new Carried(scripts)).target(version).cleanDisabled(true)
                .lockRetryCount(SECONDS_FOR_ANOTHER_TO_MIGRATE).load().migrate();
    }

    /** Hands Flyway the scripts; it scans nothing. */
    private record Carried(Map<String, String> scripts) implements ResourceProvider {

        @Override
        public LoadableResource getResource(String name) {
            String script = scripts.get(name.substring(name.lastIndexOf('/') + 1));
            return script == null ? null : new Script(name.substring(name.lastIndexOf('/') + 1), script);
        }

        @Override
        public Collection<LoadableResource> getResources(String prefix, String[] suffixes) {
            return scripts.entrySet().stream().filter(one -> one.getKey().startsWith(prefix) && List.of(suffixes).stream().anyMatch(one.getKey()::endsWith))
                    .<LoadableResource>map(one -> new Script(one.getKey(), one.getValue())).toList();
        }
    }

    private static final class Script extends LoadableResource {

        private final String name;
        private final String text;

        Script(String name, String text) {
            this.name = name;
            this.text = text;
        }

        @Override
        public Reader read() {
            return new StringReader(text);
        }

        @Override
        public String getAbsolutePath() {
            return FOLDER + "/" + name;
        }

        @Override
        public String getAbsolutePathOnDisk() {
            return getAbsolutePath();
        }

        @Override
        public String getFilename() {
            return name;
        }

        @Override
        public String getRelativePath() {
            return name;
        }
    }
}
