package org.steadwork.web;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.Config;
import org.steadwork.kernel.RefusedStartException;

/**
 * Keeps records off the wire in the clear: listening beyond this machine needs TLS, or these words in a setting:
 * {@code steadwork.plain-http-beyond-loopback=I know that records travel unencrypted}.
 */
public final class PlainHttpGuard {

    static final String SETTING = "steadwork.plain-http-beyond-loopback";
    static final String WORDS = "I know that records travel unencrypted";
    private static final Set<String> LOOPBACK = Set.of("localhost", "::1", "[::1]", "0:0:0:0:0:0:0:1");
    private static final Set<String> CERTIFICATES = Set.of("quarkus.http.ssl.certificate.key-store-file", "quarkus.http.ssl.certificate.files",
            "quarkus.tls.key-store.p12.path", "quarkus.tls.key-store.jks.path", "quarkus.tls.key-store.pem.0.cert", "quarkus.http.tls-configuration-name");

    private PlainHttpGuard() {
    }

    /** @throws RefusedStartException when records would be served in the clear to other machines */
    public static void check(Config config) {
        String host = text(config, "quarkus.http.host").orElse("0.0.0.0");
        boolean encryptedOnly = CERTIFICATES.stream().anyMatch(name -> text(config, name).isPresent())
                && Stream.of("redirect", "disabled").anyMatch(word -> word.equals(text(config, "quarkus.http.insecure-requests").orElse("enabled")));
        if (loopback(host) || encryptedOnly || text(config, SETTING).filter(WORDS::equals).isPresent()) {
            return;
        }
        throw new RefusedStartException("Steadwork was told to listen on " + host + ", where other machines reach it, without TLS. Records would travel in the clear."
                + " Set a certificate (quarkus.http.ssl.certificate.key-store-file) and quarkus.http.insecure-requests=redirect, or put a reverse proxy"
                + " before it and leave quarkus.http.host=127.0.0.1. docs/operations.md shows both. To do it all the same, set " + SETTING + "=" + WORDS);
    }

    static boolean loopback(String host) {
        return LOOPBACK.contains(host.strip().toLowerCase(Locale.ROOT)) || host.strip().matches("127(\\.\\d{1,3}){3}");
    }

    private static Optional<String> text(Config config, String name) {
        return config.getOptionalValue(name, String.class).map(String::strip).filter(value -> !value.isEmpty());
    }
}
