package org.steadwork.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged jar served beyond this machine: refused in the clear, over TLS with a certificate of its own, behind a proxy it trusts. */
@Tag("long")
class ServingIT {

    private static final String PASSWORD = "only for this test";

    @TempDir
    Path folder;

    @Test
    void otherAddressesAreRefusedInTheClearAndServedWhenSaidInWords() {
        Map<String, String> open = Map.of("quarkus.http.host", "0.0.0.0", "quarkus.http.port", "0", "steadwork.data-folder", folder.resolve("data").toString());
        PackagedCommand refused = PackagedCommand.run(open);
        refused.assertRefused("Records would travel in the clear");
        assertFalse(Files.exists(folder.resolve("data")), "something was started");
        try (PackagedApplication clinic = PackagedApplication.startKeeping(folder, Map.of("quarkus.http.host", "0.0.0.0",
                "steadwork.plain-http-beyond-loopback", "I know that records travel unencrypted"))) {
            assertTrue(clinic.log().contains("Listening on"), clinic.log());
        }
    }

    @Test
    void aCertificateServesOverTlsAndPlainRequestsAreSentThere() throws Exception {
        Path store = folder.resolve("clinic.p12");
        assertEquals(0, new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "keytool").toString(), "-genkeypair", "-alias", "clinic", "-keyalg", "EC", "-storetype",
                "PKCS12", "-keystore", store.toString(), "-storepass", PASSWORD, "-dname", "CN=localhost", "-ext", "san=dns:localhost,ip:127.0.0.1", "-validity", "2")
                .redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor());
        int tls = freePort();
        try (PackagedApplication clinic = PackagedApplication.startKeeping(folder, Map.of("quarkus.http.host", "0.0.0.0", "quarkus.http.ssl-port", String.valueOf(tls),
                "quarkus.http.ssl.certificate.key-store-file", store.toString(), "quarkus.http.ssl.certificate.key-store-password", PASSWORD,
                "quarkus.http.insecure-requests", "redirect"))) {
            HttpClient client = HttpClient.newBuilder().sslContext(trusting(store)).followRedirects(HttpClient.Redirect.NEVER).build();
            HttpResponse<String> page = client.send(HttpRequest.newBuilder(URI.create("https://localhost:" + tls + "/sign-in")).build(), HttpResponse.BodyHandlers.ofString());
            assertEquals(200, page.statusCode());
            assertTrue(page.body().contains("Sign in"));
            assertEquals("max-age=31536000", page.headers().firstValue("Strict-Transport-Security").orElse(""));
            assertTrue(page.headers().allValues("Set-Cookie").stream().allMatch(cookie -> cookie.contains("HTTPOnly") || cookie.contains("HttpOnly")), page.headers().toString());
            HttpRequest.Builder form = HttpRequest.newBuilder(URI.create("https://localhost:" + tls + "/sign-in")).header("Content-Type", "application/x-www-form-urlencoded");
            HttpResponse<String> unannounced = client.send(form.copy().POST(HttpRequest.BodyPublishers.ofInputStream(() -> new ByteArrayInputStream("userName=a".getBytes()))).build(),
                    HttpResponse.BodyHandlers.ofString());
            assertEquals(HttpClient.Version.HTTP_2, unannounced.version());
            assertEquals(411, unannounced.statusCode(), "a body over HTTP/2 that says no length");
            assertEquals(400, client.send(form.copy().POST(HttpRequest.BodyPublishers.ofString("userName=a")).build(), HttpResponse.BodyHandlers.ofString()).statusCode(),
                    "a form without its token");
            HttpResponse<String> moved = client.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + clinic.address().getPort() + "/patients"))
                    .version(HttpClient.Version.HTTP_1_1).build(), HttpResponse.BodyHandlers.ofString());
            assertTrue(moved.statusCode() >= 300 && moved.statusCode() < 400, "plain HTTP was answered with " + moved.statusCode());
            assertTrue(moved.headers().firstValue("Location").orElse("").startsWith("https://"), moved.headers().toString());
        }
    }

    /** What a proxy says of the address is believed only when a setting says that there is one. */
    @Test
    void forwardedHeadersAreTrustedOnlyFromASetting() throws Exception {
        HttpClient client = HttpClient.newHttpClient();
        try (PackagedApplication clinic = PackagedApplication.startKeeping(folder, Map.of())) {
            assertEquals("", hsts(client, clinic));
        }
        try (PackagedApplication clinic = PackagedApplication.startKeeping(folder, Map.of("quarkus.http.proxy.proxy-address-forwarding", "true",
                "quarkus.http.proxy.allow-x-forwarded", "true", "quarkus.http.proxy.trusted-proxies", "127.0.0.1"))) {
            assertEquals("max-age=31536000", hsts(client, clinic));
        }
        try (PackagedApplication clinic = PackagedApplication.startKeeping(folder, Map.of("quarkus.http.proxy.proxy-address-forwarding", "true",
                "quarkus.http.proxy.allow-x-forwarded", "true", "quarkus.http.proxy.trusted-proxies", "10.9.9.9"))) {
            assertEquals("", hsts(client, clinic), "a stranger was believed");
        }
    }

    private static String hsts(HttpClient client, PackagedApplication clinic) throws Exception {
        return client.send(HttpRequest.newBuilder(clinic.address().resolve("/sign-in")).header("X-Forwarded-Proto", "https").build(), HttpResponse.BodyHandlers.ofString())
                .headers().firstValue("Strict-Transport-Security").orElse("");
    }

    /** The bill of materials names every library that the application carries. */
    @Test
    void theBillOfMaterialsNamesWhatIsCarried() throws Exception {
        Path target = Path.of(System.getProperty("steadwork.jar")).getParent().getParent();
        JsonNode bill = new ObjectMapper().readTree(target.resolve("steadwork-sbom.json").toFile());
        assertEquals("CycloneDX", bill.path("bomFormat").asText());
        Set<String> named = new TreeSet<>();
        bill.path("components").forEach(one -> named.add(one.path("group").asText() + "." + one.path("name").asText() + "-" + one.path("version").asText()));
        String[] carried = target.resolve("quarkus-app/lib/main").toFile().list();
        assertTrue(carried != null && carried.length > 100);
        assertEquals(Set.of(), new TreeSet<>(Arrays.stream(carried).map(jar -> jar.replaceFirst("\\.jar$", ""))
                .filter(jar -> !named.contains(jar) && !named.contains(jar.replaceFirst("-linux.*$", ""))).toList()));
    }

    private static SSLContext trusting(Path store) throws Exception {
        KeyStore keys = KeyStore.getInstance(store.toFile(), PASSWORD.toCharArray());
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("clinic", keys.getCertificate("clinic"));
        TrustManagerFactory factory = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        factory.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, factory.getTrustManagers(), null);
        return context;
    }

    private static int freePort() throws Exception {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}
