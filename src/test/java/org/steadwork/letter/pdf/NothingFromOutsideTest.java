package org.steadwork.letter.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A drawing or a page that names something elsewhere makes the press neither ask the network nor read a file. */
class NothingFromOutsideTest {

    @TempDir
    Path folder;

    @Test
    void neitherNetworkNorFilesAreRead() throws Exception {
        AtomicInteger asked = new AtomicInteger();
        try (ServerSocket server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress())) {
            Thread listener = new Thread(() -> listen(server, asked));
            listener.start();
            String there = "http://127.0.0.1:" + server.getLocalPort() + "/x";
            Path script = Files.writeString(folder.resolve("x.svg"), "<svg xmlns='http://www.w3.org/2000/svg'/>");
            for (String where : new String[]{there + ".png", there + ".svg", "ftp://127.0.0.1:" + server.getLocalPort() + "/x", script.toUri().toString(), "jar:" + there + "!/x"}) {
                tryPrint("<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' viewBox='0 0 10 10'><image width='5' height='5' xlink:href='" + where
                        + "'/><rect width='1' height='1'/></svg>");
                tryPrint("<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' viewBox='0 0 10 10'><use xlink:href='" + where + "#a'/></svg>");
                tryPrint("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 10 10'><style>@import url('" + where + "');</style><rect width='1' height='1'/></svg>");
                tryPrint("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 10 10'><rect width='1' height='1' fill=\"url('" + where + "#a')\"/></svg>");
                tryPrint("<p style=\"background-image: url('" + where + "')\">words</p>");
                tryPrint("<object data='" + where + "'/><p>words</p>");
                tryPrint("<a href='" + where + "'>words</a>");
            }
        }
        assertEquals(0, asked.get(), "the press asked the network");
    }

    private static void listen(ServerSocket server, AtomicInteger asked) {
        while (true) {
            try (Socket ignored = server.accept()) {
                asked.incrementAndGet();
            } catch (IOException closed) {
                return;
            }
        }
    }

    /** Printing or refusing are both right; asking is not. */
    private static void tryPrint(String body) {
        try {
            PdfPress.print("<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>t</title></head><body>" + body + "</body></html>", "t", "a", Instant.EPOCH);
        } catch (RuntimeException refused) {
            // that is an answer too
        }
    }
}
