package org.steadwork.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/** Tells a browser that came over TLS, directly or through a trusted proxy, to come over nothing else for a year. */
@ApplicationScoped
class TlsOnly {

    private static final int AFTER_THE_PROXY = 900;

    void register(@Observes Filters filters) {
        filters.register(TlsOnly::tell, AFTER_THE_PROXY);
    }

    private static void tell(RoutingContext context) {
        if ("https".equals(context.request().scheme())) {
            context.response().putHeader("Strict-Transport-Security", "max-age=31536000");
        }
        context.next();
    }
}
