package org.steadwork.account;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Refuses to begin a session over plain HTTP from another machine, unless the clinic has set that it may be. */
@ApplicationScoped
class PlainHttpSignIn {

    @Inject
    RequestOrigin origin;

    @ConfigProperty(name = "steadwork.sign-in.plain-http-elsewhere")
    boolean plainHttpElsewhere;

    boolean refused() {
        return !origin.secure() && !origin.onThisMachine() && !plainHttpElsewhere;
    }
}
