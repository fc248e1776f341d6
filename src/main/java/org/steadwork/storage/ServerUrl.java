package org.steadwork.storage;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.eclipse.microprofile.config.Config;

/** The address of a PostgreSQL database with what the driver and the server are to do for us; what the clinic wrote into it stands. */
final class ServerUrl {

    private static final String SETTINGS = "steadwork.postgresql.";
    /** The server soon lets go of what a node held whose machine or network is gone. */
    private static final String PROBES = encoded("-c tcp_keepalives_idle=60 -c tcp_keepalives_interval=10 -c tcp_keepalives_count=3");
    private static final List<String> PARAMETERS = List.of("ApplicationName=steadwork", "connectTimeout=10", "tcpKeepAlive=true", "options=" + PROBES);

    private ServerUrl() {
    }

    /** Adds a name that the server shows, a bound on connecting, and probes from both ends for a connection that broke silently. */
    static String named(String url) {
        StringBuilder all = new StringBuilder(url);
        for (String parameter : PARAMETERS) {
            String name = parameter.substring(0, parameter.indexOf('='));
            if (!url.matches("(?s).*[?&]" + name + "=.*")) {
                all.append(all.indexOf("?") < 0 ? '?' : '&').append(parameter);
            }
        }
        return all.toString();
    }

    /**
     * Adds the bounds that the server puts on each statement, each wait for a lock, and each transaction that does nothing; 0 is none. Where the
     * clinic wrote {@code options} of its own, those stand alone.
     */
    static String bounded(String named, Config config) {
        String bounds = " -c statement_timeout=" + millis(config, "statement-timeout-seconds", 60) + " -c lock_timeout=" + millis(config, "lock-timeout-seconds", 10)
                + " -c idle_in_transaction_session_timeout=" + millis(config, "idle-transaction-timeout-seconds", 300);
        return named.replace(PROBES, PROBES + encoded(bounds));
    }

    private static long millis(Config config, String setting, int seconds) {
        return 1000L * config.getOptionalValue(SETTINGS + setting, Integer.class).orElse(seconds);
    }

    private static String encoded(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
