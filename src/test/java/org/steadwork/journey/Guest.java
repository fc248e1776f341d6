package org.steadwork.journey;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.CookiePolicy;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * A person at the pages without a browser: keeps the cookies, follows redirects and links, and sends the forms that a page
 * offers, hidden fields and token included. It can do nothing that the pages do not offer.
 */
public final class Guest {

    private final URI address;
    private final HttpClient client;
    private HttpResponse<byte[]> answer;
    private Document page;

    public Guest(URI address) {
        this.address = address;
        this.client = HttpClient.newBuilder().cookieHandler(new CookieManager(null, CookiePolicy.ACCEPT_ALL))
                .followRedirects(HttpClient.Redirect.NORMAL).connectTimeout(Duration.ofSeconds(10)).build();
    }

    /** Opens a page by its path; any status is taken, {@link #status} tells which. */
    public Guest open(String path) {
        return send(HttpRequest.newBuilder(address.resolve(path)).GET());
    }

    /** Follows the first link with exactly these words. */
    public Guest follow(String words) {
        Element link = page.select("a[href]").stream().filter(a -> a.text().strip().equals(words)).findFirst()
                .orElseThrow(() -> missing("no link '" + words + "'"));
        return open(link.absUrl("href"));
    }

    public boolean offersLink(String words) {
        return page.select("a[href]").stream().anyMatch(a -> a.text().strip().equals(words));
    }

    /** Returns the form whose button has exactly these words. */
    public FilledForm formWithButton(String words) {
        for (Element button : page.select("form button, form input[type=submit], button[form]")) {
            if (words.equals(button.text().strip()) || words.equals(button.attr("value"))) {
                return new FilledForm(this, button.hasAttr("form") ? page.getElementById(button.attr("form")) : button.closest("form"), button);
            }
        }
        throw missing("no form with the button '" + words + "'");
    }

    public boolean offersButton(String words) {
        return page.select("button").stream().anyMatch(button -> words.equals(button.text().strip()));
    }

    /** Returns the form of a CSS selector. */
    public FilledForm form(String selector) {
        Element form = page.selectFirst(selector);
        if (form == null) {
            throw missing("no form " + selector);
        }
        return new FilledForm(this, form, form.selectFirst("button, input[type=submit]"));
    }

    public boolean offersForm(String selector) {
        return page.selectFirst(selector) != null;
    }

    Guest post(String url, String encoded) {
        return send(HttpRequest.newBuilder(URI.create(url)).header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", address.toString()).POST(HttpRequest.BodyPublishers.ofString(encoded)));
    }

    private Guest send(HttpRequest.Builder request) {
        try {
            answer = client.send(request.timeout(Duration.ofSeconds(60)).build(), HttpResponse.BodyHandlers.ofByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
        page = Jsoup.parse(new String(answer.body(), StandardCharsets.UTF_8), answer.uri().toString());
        return this;
    }

    public int status() {
        return answer.statusCode();
    }

    public byte[] body() {
        return answer.body();
    }

    public String contentType() {
        return answer.headers().firstValue("Content-Type").orElse("");
    }

    public URI at() {
        return answer.uri();
    }

    public Document page() {
        return page;
    }

    /** Returns the visible words of the page, white space collapsed. */
    public String words() {
        return page.body().text();
    }

    /** Fails unless the last answer was this one; the message shows where the guest stands and what the page says. */
    public Guest expect(int status) {
        if (status() != status) {
            throw missing("expected " + status + ", but the answer was " + status());
        }
        return this;
    }

    public List<String> errors() {
        return page.select("[role=alert] li, .field__error, .notice--stop li").eachText();
    }

    /** Makes the failure that says where the guest stands and what the page says. */
    public AssertionError missing(String what) {
        String text = words();
        return new AssertionError(what + " at " + answer.uri() + " (" + status() + "): "
                + text.substring(0, Math.min(1200, text.length())));
    }
}
