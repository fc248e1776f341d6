package org.steadwork.account;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.Map;

/** A clinic that has set an OpenID Connect provider, which runs on this machine once a test starts it. */
public class WithProvider implements QuarkusTestProfile {

    static final String CLIENT = "steadwork-clinic";
    static final String SECRET = "a secret that only tests use";

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of("steadwork.openid.provider", "http://localhost:" + freePort() + "/clinic", "steadwork.openid.client-id", CLIENT,
                "steadwork.openid.secret", SECRET, "steadwork.openid.name", "Alder People", "steadwork.openid.roles-claim", "access/roles",
                "steadwork.openid.roles.lead", "clinic-leads", "steadwork.openid.roles.clinician", "clinic-clinicians",
                "steadwork.openid.roles.assistant", "front-desk,reception", "steadwork.openid.create-accounts", "true");
    }

    private static int freePort() {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
