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
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whoever sends slowly, too much or without end holds nobody else up. */
@QuarkusTest
@Tag("long")
class SlowAndLargeTest {

    private static final int SLOW_ONES = 300;
    private static final long LIMIT = 12L * 1024 * 1024;
    private static final long IN_BUFFERS = 12L * 1024 * 1024;

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

    /**
     * A body in pieces says no length beforehand; it is cut off where it gets too long, whoever reads it: forms, files, JSON, a page that takes
     * no body, an address that is not there. What is on its way in the buffers of both ends comes on top of the limit.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "POST /sign-in | application/x-www-form-urlencoded | a", "POST /sign-in | application/x-www-form-urlencoded | a=b&",
        "POST /sign-in | multipart/form-data; boundary=x | a", "POST /sign-in | application/json | [", "POST /calculate/lifting | application/json | [",
        "GET /sign-in | text/plain | a", "POST /nowhere | text/plain | a", "POST /own/nothing | application/x-www-form-urlencoded | a=b&"})
    void aBodyWithoutEndIsCutOff(String line, String type, String filler) throws Exception {
        String piece = "10000\r\n" + filler.repeat(0x10000 / filler.length()) + "\r\n";
        long sent = 0;
        String answer = "";
        long before = used();
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(20_000);
            write(socket, line + " HTTP/1.1\r\nHost: x\r\nContent-Type: " + type + "\r\nTransfer-Encoding: chunked\r\n\r\n");
            try {
                while (sent < 200L * 1024 * 1024) {
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
        assertTrue(sent < LIMIT + IN_BUFFERS, "took " + sent + " bytes");
        assertTrue(answer.isEmpty() || answer.matches("(?s)HTTP/1.1 4\\d\\d .*"), answer);
        assertEquals(200, answered());
        assertTrue(used() - before < 2 * LIMIT, "keeps " + (used() - before) + " bytes");
    }

    /** What is within the limit is read whole, in however many pieces, and a second request of the connection counts for itself. */
    @Test
    void aBodyInPiecesWithinTheLimitIsTaken() throws Exception {
        String piece = "8000\r\n" + "a=b&".repeat(0x8000 / 4) + "\r\n";
        String request = "POST /nowhere HTTP/1.1\r\nHost: x\r\nContent-Type: text/plain\r\nTransfer-Encoding: chunked\r\n\r\n" + piece.repeat(200) + "0\r\n\r\n";
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(20_000);
            write(socket, request);
            write(socket, request.replace("Host: x", "Host: x\r\nConnection: close"));
            String answers = new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
            assertEquals(3, answers.split("HTTP/1.1 40\\d ", -1).length, answers);
        }
    }

    @Test
    void aFormOfTooManyFieldsIsRefusedInWords() {
        Visitor visitor = new Visitor();
        visitor.body("/sign-in", "application/x-www-form-urlencoded", "a=b&".repeat(1_500));
        assertEquals(413, visitor.status());
        assertTrue(visitor.answer().asString().contains("more fields than can be taken"), visitor.answer().asString());
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
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
