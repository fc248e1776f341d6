package org.steadwork.web;

import static io.restassured.RestAssured.given;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;

/** A browser without a screen: opens pages, fills their forms as a person would, and keeps its cookies. */
public final class Visitor {

    private final Map<String, String> cookies = new LinkedHashMap<>();
    private Document page;
    private Response answer;

    /** A visitor that is not signed in. */
    public Visitor() {
    }

    Visitor(String sessionToken) {
        cookies.put("steadwork-session", sessionToken);
    }

    /** Opens a page, following redirects; returns its document whatever the status. */
    public Document open(String path) {
        Response response = request().get(path);
        return follow(response);
    }

    /** Opens an address exactly as it is written, percent signs and all. */
    public Document openEncoded(String address) {
        return follow(request().urlEncodingEnabled(false).get(address));
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
        return follow(request.post(path));
    }

    /** Sends a body of JSON, with the session but no form's token; redirects are not followed. */
    public Response json(String path, String body) {
        return body(path, "application/json", body);
    }

    /** Sends any body of any kind. */
    public Response body(String path, String type, String body) {
        answer = given().redirects().follow(false).cookies(cookies).accept("application/json").contentType(type)
                .body(body.getBytes(StandardCharsets.UTF_8)).post(path);
        return answer;
    }

    private FormElement form(String action) {
        Element form = page.select("form[action=" + action + "][method=post]").first();
        if (form == null) {
            throw new AssertionError("No form posts to " + action + " on " + page.title() + "; there are " + page.select("form").eachAttr("action"));
        }
        return (FormElement) form;
    }

    private RequestSpecification request() {
        return given().redirects().follow(false).cookies(cookies).accept("text/html");
    }

    private Document follow(Response response) {
        cookies.putAll(response.cookies());
        for (int hops = 0; response.statusCode() == 303 && hops < 5; hops++) {
            response = request().urlEncodingEnabled(false).get(response.header("Location").replaceFirst("^https?://[^/]+", ""));
            cookies.putAll(response.cookies());
        }
        answer = response;
        page = Jsoup.parse(response.asString());
        return page;
    }
}
