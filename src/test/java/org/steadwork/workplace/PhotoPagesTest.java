package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.steadwork.account.AuditEvent;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.TestPictures;
import org.steadwork.web.Visitor;
import org.steadwork.workplace.photo.PhotoIntake;

@QuarkusTest
class PhotoPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    Photos photos;

    @Inject
    AuditTrail audit;

    @Test
    void aPhotographIsAddedShownAndStaysInTheClinic() throws IOException {
        long id = assessed("Annis", "Copperwheat");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        add(visitor, id, Map.of("caption", "The <screen> & its stand"), "IMG.exe", TestPictures.jpeg(3000, 1500));
        assertEquals(200, visitor.status());
        assertTrue(visitor.page().select(".photos").text().contains("The <screen> & its stand"));
        assertTrue(visitor.page().select(".photos").text().contains("stays in the clinic"));
        assertEquals(0, mayLeave(id));
        String photo = visitor.page().select(".photos a").attr("href");
        visitor.open(photo + "/picture");
        assertEquals("image/jpeg", visitor.answer().contentType());
        assertEquals("no-store", visitor.answer().header("Cache-Control"));
        assertEquals("nosniff", visitor.answer().header("X-Content-Type-Options"));
        assertEquals(2000, ImageIO.read(new ByteArrayInputStream(visitor.answer().asByteArray())).getWidth());
        visitor.open(photo + "/thumbnail");
        assertEquals("no-store", visitor.answer().header("Cache-Control"));
        assertEquals(PhotoIntake.THUMBNAIL_SIDE, ImageIO.read(new ByteArrayInputStream(visitor.answer().asByteArray())).getWidth());
        assertTrue(acts().contains("viewed photograph") && acts().contains("added photograph"));
    }

    @Test
    void onlyThePatientsWordLetsItLeaveAndWithdrawingRemovesTheBytes() {
        long id = assessed("Bettrys", "Copperwheat");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        add(visitor, id, Map.of("caption", "Desk", "mayLeave", "yes"), "a.png", TestPictures.png(50, 50));
        assertEquals(1, mayLeave(id));
        String photo = visitor.page().select(".photos a").attr("href");
        Visitor other = accounts.visitor(Role.LEAD);
        visitor.open(photo);
        other.open(photo);
        visitor.submit(photo, Map.of("caption", "Desk 14"));
        assertEquals(200, visitor.status());
        other.submit(photo, Map.of("caption", "Desk 15"));
        assertEquals(409, other.status());
        assertTrue(other.page().select("#caption-stored").text().contains("Desk 14"));
        visitor.open(photo);
        visitor.submit(photo + "/withdraw", Map.of("reason", ""));
        assertEquals(422, visitor.status());
        visitor.submit(photo + "/withdraw", Map.of("reason", "A colleague can be recognised"));
        assertEquals(200, visitor.status());
        assertTrue(visitor.page().text().contains("A colleague can be recognised"));
        assertTrue(visitor.page().select("img").isEmpty());
        visitor.open(photo + "/picture");
        assertEquals(404, visitor.status());
        visitor.open(photo + "/thumbnail");
        assertEquals(404, visitor.status());
        assertEquals(0, mayLeave(id));
        assertEquals(0, bytesKept(Long.parseLong(photo.replaceAll(".*/", ""))));
    }

    @Test
    void aWrongFileIsAnsweredAtItsFieldAndTheRestIsKept() {
        long id = assessed("Cerys", "Copperwheat");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        add(visitor, id, Map.of("caption", "Kept words", "mayLeave", "yes"), "photo.jpg", "<html>no picture</html>".getBytes());
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#photo-error").text().contains("neither a JPEG nor a PNG"));
        assertEquals("Kept words", visitor.page().select("#caption").val());
        assertTrue(visitor.page().select("[name=mayLeave]").hasAttr("checked"));
        byte[] large = new byte[PhotoIntake.MOST_BYTES + 5];
        System.arraycopy(TestPictures.jpeg(20, 20), 0, large, 0, 600);
        add(visitor, id, Map.of("caption", "Kept words"), "photo.jpg", large);
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#photo-error").text().contains("at most 10 MB"));
        assertEquals("Kept words", visitor.page().select("#caption").val());
    }

    /** Sent as a browser sends it, with its length announced. */
    @Test
    void moreThanTheServerTakesIsAnsweredByAPageInWords() throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + RestAssured.port + "/cases/1/work-place/photos/new"))
                .header("Content-Type", "multipart/form-data; boundary=part").POST(HttpRequest.BodyPublishers.ofByteArray(new byte[13 * 1024 * 1024])).build();
        HttpResponse<String> answer = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build().send(request, HttpResponse.BodyHandlers.ofString());
        assertEquals(413, answer.statusCode());
        assertTrue(answer.body().contains("<h1>Too much at once</h1>"), answer.body());
        assertTrue(answer.headers().firstValue("Content-Security-Policy").isPresent());
    }

    @Test
    void withoutTheTokenOrByTheWrongPersonNothingIsStored() {
        long id = assessed("Eluned", "Copperwheat");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        add(visitor, id, Map.of("caption", "Forged", "csrf-token", "forged"), "a.png", TestPictures.png(50, 50));
        assertEquals(400, visitor.status());
        visitor.open("/cases/" + id + "/work-place");
        assertTrue(visitor.page().select(".photos").isEmpty());
        add(visitor, id, Map.of("caption", "Desk"), "a.png", TestPictures.png(50, 50));
        String photo = visitor.page().select(".photos a").attr("href");
        long elsewhere = assessed("Ffion", "Copperwheat");
        visitor.open(photo.replace("/cases/" + id + "/", "/cases/" + elsewhere + "/") + "/picture");
        assertEquals(404, visitor.status());
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        assistant.open(photo + "/picture");
        assertEquals(403, assistant.status());
        assertFalse(String.valueOf(assistant.answer().contentType()).startsWith("image"));
    }

    private void add(Visitor visitor, long id, Map<String, String> changes, String name, byte[] file) {
        String path = "/cases/" + id + "/work-place/photos/new";
        visitor.open(path);
        visitor.upload(path, changes, "photo", name, file);
    }

    private long assessed(String given, String family) {
        long id = cases.open(given, family);
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/cases/" + id + "/work-place/edit");
        visitor.submit("/cases/" + id + "/work-place/edit", Map.of("assessedOn", "4 Mar 2026", "desk_now", "740"));
        assertEquals(200, visitor.status());
        return id;
    }

    @Transactional
    int mayLeave(long id) {
        return photos.mayLeave(id).size();
    }

    @Transactional
    long bytesKept(long photo) {
        return photos.getEntityManager().createQuery("select count(i) from PhotoImage i where i.photoId = ?1", Long.class).setParameter(1, photo).getSingleResult();
    }

    @Transactional
    List<String> acts() {
        return audit.latest(30).stream().map(AuditEvent::action).toList();
    }
}
