package org.steadwork.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whoever sends slowly, too much or without end holds nobody else up. */
@QuarkusTest
class SlowAndLargeTest {

    private static final int SLOW_ONES = 300;

    @TestHTTPResource("/")
    URI address;

    /** Hundreds begin a request and send a letter now and then; everybody else is answered as before. */
    @Test
    void slowSendersHoldNobodyUp() throws Exception {
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < SLOW_ONES; i++) {
                Socket socket = new Socket(address.getHost(), address.getPort());
                slow.add(socket);
                write(socket, i % 2 == 0 ? "POST /sign-in HTTP/1.1\r\nHost: x\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 5000\r\n\r\nuserName=a"
                        : "GET /sign-in HTTP/1.1\r\nHost: x\r\nX-Slow: ");
            }
            for (int round = 0; round < 5; round++) {
                for (Socket socket : slow) {
                    write(socket, "a");
                }
                long begun = System.nanoTime();
                assertEquals(200, answered());
                assertTrue((System.nanoTime() - begun) / 1e9 < 5, "answered late while others send slowly");
            }
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
        assertEquals(200, answered());
    }

    /** A body in pieces says no length beforehand; it is cut off where it gets too long. */
    @Test
    void aBodyWithoutEndIsCutOff() throws Exception {
        String piece = "10000\r\n" + "a".repeat(0x10000) + "\r\n";
        long sent = 0;
        String answer = "";
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(20_000);
            write(socket, "POST /sign-in HTTP/1.1\r\nHost: x\r\nContent-Type: application/x-www-form-urlencoded\r\nTransfer-Encoding: chunked\r\n\r\n");
            try {
                while (sent < 200L * 1024 * 1024 && socket.getInputStream().available() == 0) {
                    write(socket, piece);
                    sent += 0x10000;
                }
                byte[] first = new byte[200];
                int read = socket.getInputStream().read(first);
                answer = read < 0 ? "" : new String(first, 0, read, StandardCharsets.ISO_8859_1);
            } catch (IOException cutOff) {
                answer = "";
            }
        }
        assertTrue(sent < 60L * 1024 * 1024, "took " + sent + " bytes");
        assertTrue(answer.isEmpty() || answer.contains(" 413 ") || answer.contains(" 400 "), answer);
        assertEquals(200, answered());
    }

    @Test
    void headersAndAddressesWithoutEndAreRefused() throws Exception {
        for (String head : List.of("GET /" + "x".repeat(100_000) + " HTTP/1.1\r\nHost: x\r\n\r\n", "GET /sign-in HTTP/1.1\r\nHost: x\r\nX-Long: " + "y".repeat(500_000) + "\r\n\r\n",
                "GET /sign-in HTTP/1.1\r\nHost: x\r\nCookie: steadwork-session=" + "z".repeat(200_000) + "\r\n\r\n", "\u0000\u0001\u0002garbage\r\n\r\n",
                "POST /sign-in HTTP/1.1\r\nHost: x\r\nContent-Length: -5\r\n\r\n", "POST /sign-in HTTP/1.1\r\nHost: x\r\nContent-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\nGET /nowhere HTTP/1.1\r\n\r\n",
                "GET /sign-in HTTP/9.9\r\nHost: x\r\n\r\n")) {
            String answer = raw(head);
            assertTrue(answer.isEmpty() || answer.matches("(?s)HTTP/1\\.[01] (4\\d\\d|501|505) .*"), head.substring(0, Math.min(60, head.length())) + ": "
                    + answer.substring(0, Math.min(200, answer.length())));
            assertEquals(200, answered());
        }
    }

    private String raw(String head) {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(5_000);
            write(socket, head);
            socket.shutdownOutput();
            return new String(socket.getInputStream().readNBytes(4000), StandardCharsets.ISO_8859_1);
        } catch (IOException cutOff) {
            return "";
        }
    }

    private int answered() {
        Visitor visitor = new Visitor();
        visitor.open("/sign-in");
        return visitor.status();
    }

    private static void write(Socket socket, String text) throws IOException {
        OutputStream out = socket.getOutputStream();
        out.write(text.getBytes(StandardCharsets.ISO_8859_1));
        out.flush();
    }
}
