package org.steadwork.web;

import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.sql.SQLException;
import java.util.Set;
import java.util.stream.Stream;
import org.h2.mvstore.DataUtils;
import org.h2.mvstore.MVStoreException;
import org.jboss.logging.Logger;

/**
 * Tells when the database cannot be had or takes nothing: gone, shut down, its disk full or read-only. The page then says so (503) and that nothing
 * was stored; the server goes on asking and recovers by itself. It also answers for failures before any page was reached, such as while the
 * session is looked up.
 */
@ApplicationScoped
class Unavailable {

    static final int SECONDS_UNTIL_RETRY = 10;
    /** Closed, disk full or read-only, no connection, as H2 numbers them. */
    private static final Set<Integer> OF_H2 = Set.of(90007, 90028, 90030, 90031, 90067, 90097, 90098, 90121);
    private static final Set<String> SINGLE_STATES = Set.of("25006", "57014", "25P03");
    /** Reading or writing failed, closed, damaged. */
    private static final Set<Integer> OF_THE_FILE = Set.of(DataUtils.ERROR_READING_FAILED, DataUtils.ERROR_WRITING_FAILED, DataUtils.ERROR_CLOSED,
            DataUtils.ERROR_FILE_CORRUPT);
    private static final int DEEPEST_CAUSE = 12;
    private static final Logger LOG = Logger.getLogger("steadwork");
    private static final String PAGE = """
            <!doctype html>
            <html lang="en-GB"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
            <title>Not available · Steadwork</title><link rel="stylesheet" href="/css/steadwork.css"></head>
            <body><div class="frame"><main class="main" id="main"><h1>Not available</h1>
            <p>The records cannot be reached at the moment. What was not acknowledged as saved is not stored.</p>
            <p>Keep what you typed, wait a little, and try again. If it lasts, tell the lead of the clinic; the log says more.</p></main></div></body></html>
            """;

    void register(@Observes Router router) {
        router.route().order(Integer.MIN_VALUE).failureHandler(Unavailable::answer);
    }

    private static void answer(RoutingContext context) {
        if (context.failure() == null || !concerns(context.failure()) || context.response().ended()) {
            context.next();
            return;
        }
        log(context.failure());
        context.response().setStatusCode(503).putHeader(HttpHeaders.CONTENT_TYPE, "text/html; charset=utf-8").putHeader("Cache-Control", "no-store")
                .putHeader("Retry-After", String.valueOf(SECONDS_UNTIL_RETRY)).end(PAGE);
    }

    static void log(Throwable e) {
        Throwable root = e;
        for (int i = 0; i < DEEPEST_CAUSE && root.getCause() != null; i++) {
            root = root.getCause();
        }
        boolean full = root instanceof IOException && String.valueOf(root.getMessage()).contains("No space");
        LOG.errorf("The database cannot be used: %s", full ? "its disk is full" : root.getClass().getSimpleName()
                + (root instanceof SQLException sql ? ", state " + sql.getSQLState() + ", code " + sql.getErrorCode() : ""));
    }

    static boolean concerns(Throwable e) {
        return concerns(e, DEEPEST_CAUSE);
    }

    private static boolean concerns(Throwable e, int deepest) {
        if (e == null || deepest == 0) {
            return false;
        }
        return e instanceof SQLException sql && gone(sql) || e instanceof MVStoreException store && OF_THE_FILE.contains(store.getErrorCode()) || concerns(e.getCause(), deepest - 1)
                || Stream.of(e.getSuppressed()).anyMatch(one -> concerns(one, deepest - 1));
    }

    /**
     * Class 08: no connection. 57P: the server is going or coming. 53: no room. 25006: read-only. 57014, 25P03: it took longer than
     * the server allows. Without a state: none was free in time.
     */
    private static boolean gone(SQLException e) {
        String state = e.getSQLState();
        return state == null ? String.valueOf(e.getMessage()).contains("cquisition timeout")
                : state.startsWith("08") || state.startsWith("57P") || state.startsWith("53") || SINGLE_STATES.contains(state) || OF_H2.contains(e.getErrorCode());
    }
}
