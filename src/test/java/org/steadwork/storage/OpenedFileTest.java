package org.steadwork.storage;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.quarkus.runtime.StartupEvent;
import io.smallrye.config.PropertiesConfigSource;
import io.smallrye.config.SmallRyeConfigBuilder;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.microprofile.config.Config;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenedFileTest {

    private static final String URL = "quarkus.datasource.jdbc.url";

    @TempDir
    Path folder;

    @AfterEach
    void forgetWhatWasHanded() throws Exception {
        new OpenedFile().letGo(new StartupEvent());
        System.clearProperty(URL);
        System.clearProperty("quarkus.datasource.password");
    }

    @Test
    void theServersFileStaysOpenUntilItHasStarted() throws Exception {
        StartCheck.runForServer(config("clinic", Map.of()));
        assertThrows(OverlappingFileLockException.class, () -> lock("clinic"), "H2 holds it");
        new OpenedFile().letGo(new StartupEvent());
        assertDoesNotThrow(() -> lock("clinic"));
    }

    @Test
    void aSealedOneToo() throws Exception {
        StartCheck.runForServer(config("sealed", Map.of("steadwork.database.key", "a database key for this test alone, 32 and more")));
        assertThrows(OverlappingFileLockException.class, () -> lock("sealed"));
    }

    @Test
    void aCommandLeavesItClosed() {
        StartCheck.run(config("clinic", Map.of()));
        assertDoesNotThrow(() -> lock("clinic"));
    }

    private void lock(String name) throws Exception {
        try (FileChannel file = FileChannel.open(folder.resolve(name + ".mv.db"), StandardOpenOption.WRITE)) {
            file.tryLock().release();
        }
    }

    private Config config(String name, Map<String, String> more) {
        Map<String, String> settings = new HashMap<>(more);
        settings.put(URL, "jdbc:h2:file:" + folder + "/" + name);
        settings.put("steadwork.data-folder", folder.toString());
        return new SmallRyeConfigBuilder().addDefaultInterceptors().withSources(new PropertiesConfigSource(settings, "test", 100)).build();
    }
}
