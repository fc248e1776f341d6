package org.steadwork.account;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/** Opens the one-time set-up page while the clinic has no account; its link is printed on the console and lasts until used. */
@ApplicationScoped
class FirstRun {

    private static final Logger LOG = Logger.getLogger("steadwork");

    @Inject
    Accounts accounts;

    @ConfigProperty(name = "steadwork.demo")
    boolean demo;

    @ConfigProperty(name = "quarkus.http.port")
    int port;

    private volatile String token;

    @Transactional
    void start(@Observes StartupEvent event) {
        if (demo || !accounts.none()) {
            LOG.infof(demo ? "The demo clinic, all of it invented, is ready: http://localhost:%d/" : "Steadwork is ready: http://localhost:%d/",
                    (Object) port);
            return;
        }
        token = OpaqueToken.fresh();
        LOG.infof("This clinic has no account yet. Make the first lead's here, once: http://localhost:%d/first-run?key=%s", (Object) port, token);
    }

    boolean opens(String key) {
        String expected = token;
        return expected != null && key != null && MessageDigest.isEqual(expected.getBytes(StandardCharsets.UTF_8),
                key.getBytes(StandardCharsets.UTF_8)) && accounts.none();
    }

    void used() {
        token = null;
    }
}
