package org.steadwork.account;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * Opens the one-time set-up page while the clinic has no account. Its link is printed on the console and lasts until used, or until a start a
 * day later; any node on the database takes it.
 */
@ApplicationScoped
class FirstRun {

    private static final Logger LOG = Logger.getLogger("steadwork");

    private static final Duration KEPT = Duration.ofDays(1);

    @Inject
    Accounts accounts;

    @ConfigProperty(name = "steadwork.demo")
    boolean demo;

    @ConfigProperty(name = "quarkus.http.port")
    int port;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @Transactional
    void start(@Observes StartupEvent event) {
        if (demo || !accounts.none()) {
            LOG.infof(demo ? "The demo clinic, all of it invented, is ready: http://localhost:%d/" : "Steadwork is ready: http://localhost:%d/",
                    (Object) port);
            return;
        }
        String token = OpaqueToken.fresh();
        Instant now = Instant.now(clock);
        db.createNativeQuery("delete from first_run_key where made_at < ?1").setParameter(1, Timestamp.from(now.minus(KEPT))).executeUpdate();
        db.createNativeQuery("insert into first_run_key (key_hash, made_at) values (?1, ?2)").setParameter(1, OpaqueToken.hash(token))
                .setParameter(2, Timestamp.from(now)).executeUpdate();
        LOG.infof("This clinic has no account yet. Make the first lead's here, once: http://localhost:%d/first-run?key=%s", (Object) port, token);
    }

    @Transactional
    boolean opens(String key) {
        return key != null && accounts.none() && ((Number) db.createNativeQuery("select count(*) from first_run_key where key_hash = ?1")
                .setParameter(1, OpaqueToken.hash(key)).getSingleResult()).longValue() > 0;
    }

    /** Uses a key up and shuts all others; returns false when somebody used it a moment ago. */
    boolean used(String key) {
        boolean first = db.createNativeQuery("delete from first_run_key where key_hash = ?1").setParameter(1, OpaqueToken.hash(key)).executeUpdate() == 1;
        db.createNativeQuery("delete from first_run_key").executeUpdate();
        return first;
    }
}
