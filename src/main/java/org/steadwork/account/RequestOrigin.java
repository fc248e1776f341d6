package org.steadwork.account;

import io.quarkus.arc.Arc;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.net.SocketAddress;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;

/** From where the running request comes; nothing is known of what the product does by itself. */
@ApplicationScoped
class RequestOrigin {

    private static final int LONGEST_ADDRESS = 60;

    @Inject
    CurrentVertxRequest current;

    Optional<HttpServerRequest> request() {
        if (!Arc.container().requestContext().isActive()) {
            return Optional.empty();
        }
        RoutingContext context = current.getCurrent();
        return context == null ? Optional.empty() : Optional.of(context.request());
    }

    /** Returns the address of the asking machine, null outside a request. */
    String address() {
        return request().map(RequestOrigin::address).orElse(null);
    }

    String browser() {
        return request().map(request -> BrowserName.of(request.getHeader("User-Agent"))).orElse(null);
    }

    /** True when the browser speaks to us, or to the proxy before us, over TLS. */
    boolean secure() {
        return request().map(RequestOrigin::secure).orElse(false);
    }

    /** True when the browser runs on the machine that the clinic runs on, so that nothing travels. */
    boolean onThisMachine() {
        String from = address();
        return from == null || from.matches("127\\..*|::1|0:0:0:0:0:0:0:1(%.*)?");
    }

    static boolean secure(HttpServerRequest request) {
        return request.isSSL() || "https".equals(request.scheme());
    }

    private static String address(HttpServerRequest request) {
        SocketAddress from = request.remoteAddress();
        String host = from == null ? null : from.hostAddress() == null ? from.host() : from.hostAddress();
        return host == null ? null : host.length() > LONGEST_ADDRESS ? host.substring(0, LONGEST_ADDRESS) : host;
    }
}
