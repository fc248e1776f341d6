package org.steadwork.web;

import static io.restassured.RestAssured.given;

import io.restassured.builder.MultiPartSpecBuilder;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;

/** A browser without a screen: opens pages, fills their forms as a person would, and keeps its cookies. */
public final class Visitor {

    private static final Set<Integer> REDIRECTS = Set.of(302, 303);
    private static final int MOST_REDIRECTS = 5;

    private final Map<String, String> cookies = new LinkedHashMap<>();
    private final URI clinic;
    private String address;
    private Document page;
    private Response answer;
    private URI at;

    /** A visitor that is not signed in. */
    public Visitor() {
        this(null, Map.of());
    }

    /** A visitor of a clinic at this address, not signed in. */
    public Visitor(URI clinic) {
        this(clinic, Map.of());
    }

    Visitor(String sessionToken) {
        this(null, Map.of("steadwork-session", sessionToken));
    }

    private Visitor(URI clinic, Map<String, String> cookies) {
        this.clinic = clinic;
        this.cookies.putAll(cookies);
    }

    /** Lets the visitor come from another network address. */
    public Visitor from(String network) {
        address = network;
        return this;
    }

    /** The same browser at another address of the clinic: a visitor with the cookies of this one. */
    public Visitor movedTo(URI otherAddress) {
        return new Visitor(otherAddress, cookies);
    }

    /** Goes on in another session, as after signing in anew. */
    void goOnIn(String sessionToken) {
        cookies.put("steadwork-session", sessionToken);
    }

    /** Whether the page shown is the one that asks who somebody is. */
    boolean askedToSignIn() {
        return page != null && at != null && at.getPath().equals("/sign-in");
    }

    /** The token of the session cookie, null before a sign-in. */
    public String sessionToken() {
        return cookies.get("steadwork-session");
    }

    /** Opens a page, following redirects; returns its document whatever the status. */
    public Document open(String path) {
        return follow(request().get(path), path);
    }

    /** Opens an address exactly as it is written, percent signs and all. */
    public Document openEncoded(String address) {
        return follow(request().urlEncodingEnabled(false).get(address), address);
    }

    /** Fetches something that is no page, as a download, and returns its text. */
    public String openFile(String path) {
        answer = request().accept("*/*").get(path);
        return answer.asString();
    }

    /** Where the visitor stands, after redirects. */
    public URI at() {
        return at;
    }

    public int status() {
        return answer.statusCode();
    }

    public Document page() {
        return page;
    }

    public Response answer() {
        return answer;
    }

    /** Sends the form with this action (or the only main form) of the page shown, with its present values changed by {@code changes}. */
    public Document submit(String action, Map<String, String> changes) {
        return submit(action, changes, Map.of());
    }

    /** As {@link #submit(String, Map)}, with fields that take several values. */
    public Document submit(String action, Map<String, String> changes, Map<String, List<String>> several) {
        FormElement form = form(action);
        Map<String, List<String>> values = new LinkedHashMap<>();
        for (var pair : form.formData()) {
            values.computeIfAbsent(pair.key(), k -> new java.util.ArrayList<>()).add(pair.value());
        }
        changes.forEach((name, value) -> values.put(name, List.of(value)));
        values.putAll(several);
        return post(form.attr("action"), values);
    }

    /** Posts fields as they are, with the cookies kept but no token added. */
    public Document post(String path, Map<String, List<String>> values) {
        RequestSpecification request = request().contentType("application/x-www-form-urlencoded; charset=utf-8");
        values.forEach((name, list) -> request.formParam(name, list));
        return follow(request.post(path), path);
    }

    /** Posts fields that are encoded already. */
    public Document postEncoded(String address, String fields) {
        return follow(request().contentType("application/x-www-form-urlencoded; charset=utf-8").urlEncodingEnabled(false).body(fields).post(address), address);
    }

    /** Sends a body of JSON, with the session but no form's token; redirects are not followed. */
    public Response json(String path, String body) {
        return body(path, "application/json", body);
    }

    /** Sends any body of any kind. */
    public Response body(String path, String type, String body) {
        RequestSpecification request = given().redirects().follow(false).cookies(cookies).accept("application/json").contentType(type);
        // the client encodes what it takes for a form by itself, and then only from text
        answer = (type.contains("form-urlencoded") ? request.urlEncodingEnabled(false).body(body) : request.body(body.getBytes(StandardCharsets.UTF_8))).post(path);
        return answer;
    }

    /** Sends a form of the page shown with a file, as a browser does: in parts, its present values changed by {@code changes}. */
    public Document upload(String action, Map<String, String> changes, String field, String fileName, byte[] file) {
        RequestSpecification request = request().contentType("multipart/form-data");
        Map<String, String> values = new LinkedHashMap<>();
        form(action).formData().forEach(pair -> values.put(pair.key(), pair.value()));
        values.remove(field);
        values.putAll(changes);
        values.forEach((name, value) -> request.multiPart(new MultiPartSpecBuilder(value).controlName(name)
                .mimeType("text/plain").charset("UTF-8").build()));
        request.multiPart(field, fileName, file, "application/octet-stream");
        return follow(request.post(action), action);
    }

    private FormElement form(String action) {
        Element form = page.select("form[action=" + action + "][method=post]").first();
        if (form == null) {
            throw new AssertionError("No form posts to " + action + " on " + page.title() + "; there are " + page.select("form").eachAttr("action"));
        }
        return (FormElement) form;
    }

    private RequestSpecification request() {
        RequestSpecification request = given().redirects().follow(false).cookies(cookies).accept("text/html");
        if (address != null) {
            request = request.header("X-Forwarded-For", address);
        }
        return clinic == null ? request : request.baseUri(clinic.toString());
    }

    private Document follow(Response first, String address) {
        Response response = first;
        at = whereTo(address);
        cookies.putAll(response.cookies());
        for (int hops = 0; REDIRECTS.contains(response.statusCode()) && hops < MOST_REDIRECTS; hops++) {
            at = at.resolve(response.header("Location"));
            response = request().urlEncodingEnabled(false).get(at.getRawPath() + (at.getRawQuery() == null ? "" : "?" + at.getRawQuery()));
            cookies.putAll(response.cookies());
        }
        answer = response;
        page = Jsoup.parse(response.asString(), at.toString());
        return page;
    }

    /** An address that is none leads nowhere in particular: what was answered is then looked at all the same. */
    private URI whereTo(String address) {
        URI home = clinic == null ? URI.create("http://localhost/") : clinic;
        try {
            return home.resolve(address.replace(" ", "%20"));
        } catch (IllegalArgumentException e) {
            return home;
        }
    }
}
