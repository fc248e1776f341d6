package org.steadwork.journey;

import java.net.URI;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.steadwork.web.Visitor;

/** A visitor who does only what the pages offer: follows their links and sends their forms, and fails where one is not there. */
public final class Guest {

    private final Visitor visitor;

    public Guest(URI address) {
        this(new Visitor(address));
    }

    private Guest(Visitor visitor) {
        this.visitor = visitor;
    }

    /** The same browser, sent to another node of the clinic as a proxy does. */
    public Guest movedTo(URI otherNode) {
        return new Guest(visitor.movedTo(otherNode));
    }

    /** Opens a page by its path; any status is taken, {@link #status} tells which. */
    public Guest open(String path) {
        visitor.openEncoded(path);
        return this;
    }

    /** Follows the first link with exactly these words. */
    public Guest follow(String words) {
        Element link = page().select("a[href]").stream().filter(a -> a.text().strip().equals(words)).findFirst()
                .orElseThrow(() -> missing("no link '" + words + "'"));
        return open(link.absUrl("href"));
    }

    public boolean offersLink(String words) {
        return page().select("a[href]").stream().anyMatch(a -> a.text().strip().equals(words));
    }

    /** Returns the form whose button has exactly these words. */
    public FilledForm formWithButton(String words) {
        for (Element button : page().select("form button, form input[type=submit], button[form]")) {
            if (words.equals(button.text().strip()) || words.equals(button.attr("value"))) {
                return new FilledForm(this, button.hasAttr("form") ? page().getElementById(button.attr("form")) : button.closest("form"), button);
            }
        }
        throw missing("no form with the button '" + words + "'");
    }

    public boolean offersButton(String words) {
        return page().select("button").stream().anyMatch(button -> words.equals(button.text().strip()));
    }

    /** Returns the form of a CSS selector. */
    public FilledForm form(String selector) {
        Element form = page().selectFirst(selector);
        if (form == null) {
            throw missing("no form " + selector);
        }
        return new FilledForm(this, form, form.selectFirst("button, input[type=submit]"));
    }

    public boolean offersForm(String selector) {
        return page().selectFirst(selector) != null;
    }

    Guest post(String url, String encoded) {
        visitor.postEncoded(url, encoded);
        return this;
    }

    public int status() {
        return visitor.status();
    }

    public byte[] body() {
        return visitor.answer().asByteArray();
    }

    public String contentType() {
        String type = visitor.answer().contentType();
        return type == null ? "" : type;
    }

    public URI at() {
        return visitor.at();
    }

    public Document page() {
        return visitor.page();
    }

    /** Returns the visible words of the page, white space collapsed. */
    public String words() {
        return page().body().text();
    }

    /** Fails unless the last answer was this one; the message shows where the guest stands and what the page says. */
    public Guest expect(int status) {
        if (status() != status) {
            throw missing("expected " + status + ", but the answer was " + status());
        }
        return this;
    }

    public List<String> errors() {
        return page().select("[role=alert] li, .field__error, .notice--stop li").eachText();
    }

    /** Makes the failure that says where the guest stands and what the page says. */
    public AssertionError missing(String what) {
        String text = words();
        return new AssertionError(what + " at " + at() + " (" + status() + "): "
                + text.substring(0, Math.min(1200, text.length())));
    }
}
