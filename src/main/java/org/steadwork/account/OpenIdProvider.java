package org.steadwork.account;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;

/** The clinic's OpenID Connect provider, where one is set. */
@ApplicationScoped
class OpenIdProvider {

    @Inject
    Config config;

    private Optional<OpenIdSettings> settings;

    @PostConstruct
    void read() {
        settings = OpenIdSettings.read(config);
    }

    /** Lets a wrong setting stop the start, and not the first sign-in. */
    void start(@Observes StartupEvent event) {
        on();
    }

    boolean on() {
        return settings.isPresent();
    }

    /** Returns the settings; where none are set there is nothing at the address that asked. */
    OpenIdSettings settings() {
        return settings.orElseThrow(NotFoundException::new);
    }

    /** Returns what pages call the provider, null where none is set. */
    String name() {
        return settings.map(OpenIdSettings::name).orElse(null);
    }
}
