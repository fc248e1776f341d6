package org.steadwork.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;

/** The answers a page gives: itself, a page with errors, a page with a conflict, or the way to another page. */
public final class Answers {

    private Answers() {
    }

    public static Response page(TemplateInstance page) {
        return html(200, page);
    }

    /** The form again, with what was typed and what is wrong. */
    public static Response unprocessable(TemplateInstance page) {
        return html(422, page);
    }

    /** The form again, with what was typed and what somebody else stored meanwhile. */
    public static Response conflict(TemplateInstance page) {
        return html(409, page);
    }

    public static Response seeOther(String path) {
        return Response.seeOther(URI.create(path)).build();
    }

    static Response html(int status, TemplateInstance page) {
        return Response.status(status).type(MediaType.TEXT_HTML_TYPE.withCharset("utf-8")).header("Cache-Control", "no-store")
                .entity(page).build();
    }
}
