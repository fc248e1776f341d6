package org.steadwork.content;

import io.quarkus.arc.All;
import io.quarkus.arc.InstanceHandle;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.Initialized;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;
import org.jboss.logging.Logger;

/** Reads content while the database is being opened; one after the other, they would make the start longer. */
@ApplicationScoped
class EarlyReading {

    private static final Logger LOG = Logger.getLogger(EarlyReading.class);

    @Inject
    @All
    List<InstanceHandle<ReadEarly>> readers;

    void begin(@Observes @Initialized(ApplicationScoped.class) Object container) {
        Thread reading = new Thread(() -> readers.forEach(EarlyReading::read), "content");
        reading.setDaemon(true);
        reading.start();
    }

    private static void read(InstanceHandle<ReadEarly> reader) {
        try {
            reader.get().made();
        } catch (RuntimeException e) {
            // the start makes the bean again and ends with this problem; here it would end the thread alone
            LOG.debug("Content could not be read early", e);
        }
    }
}
