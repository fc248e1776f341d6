package org.steadwork.web;

import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpVersion;
import io.vertx.core.net.impl.ConnectionBase;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Answers a request that is larger than the server takes by a page in words. The server's own refusal is empty, and a browser that is cut off
 * while it sends shows nothing at all; so what still comes is read and thrown away before the answer, up to a bound. A body that says no length
 * is counted while it arrives ({@link UnannouncedBody}); over HTTP/2, where browsers always say one, it is asked for (411).
 */
@ApplicationScoped
class BodyLimit {

    /** Before the server's own check, which stands at order −2. */
    private static final int FIRST = 1000;
    private static final long MOST_READ_AWAY = 200L * 1024 * 1024;
    private static final long UNSAID = -1;
    private static final Set<HttpMethod> BODILESS = Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);
    private static final String PAGE = """
            <!doctype html>
            <html lang="en-GB"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
            <title>Too much at once · Steadwork</title><link rel="stylesheet" href="/css/steadwork.css"></head>
            <body><div class="frame"><main class="main" id="main"><h1>Too much at once</h1>
            <p>What was sent is larger than can be taken. A photograph may have at most 10 MB.</p>
            <p>Go back, your words are still there; choose a smaller file and save again. Nothing was changed.</p>
            <p><a href="/">To Today</a></p></main></div></body></html>
            """;

    @ConfigProperty(name = "quarkus.http.limits.max-body-size")
    MemorySize most;

    void register(@Observes Filters filters) {
        filters.register(this::check, FIRST);
    }

    private void check(RoutingContext context) {
        HttpServerRequest request = context.request();
        long announced = length(request);
        if (announced == UNSAID && request.version() == HttpVersion.HTTP_2 && !BODILESS.contains(request.method())) {
            context.response().setStatusCode(411).end();
        } else if (announced <= most.asLongValue()) {
            if (request.headers().contains("Transfer-Encoding")) {
                UnannouncedBody.watch(((ConnectionBase) request.connection()).channel().pipeline(), most.asLongValue());
            }
            context.next();
        } else if (announced > MOST_READ_AWAY) {
            answer(context);
        } else {
            request.endHandler(end -> answer(context));
            request.handler(thrownAway -> { });
            request.resume();
        }
    }

    private static void answer(RoutingContext context) {
        if (!context.response().ended()) {
            context.response().setStatusCode(413).putHeader("Content-Type", "text/html; charset=utf-8").putHeader("Cache-Control", "no-store")
                    .putHeader("Connection", "close").end(PAGE);
        }
    }

    private static long length(HttpServerRequest request) {
        String written = request.getHeader("Content-Length");
        return written != null && written.matches("\\d{1,18}") ? Long.parseLong(written) : UNSAID;
    }
}
