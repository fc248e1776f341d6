package org.steadwork.web;

import jakarta.ws.rs.core.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the JSON API answers when something is wrong, as application/problem+json. Source: RFC 9457. */
public final class ApiProblem {

    public static final String TYPE = "application/problem+json";

    private final int status;
    private final Map<String, Object> members = new LinkedHashMap<>();

    private ApiProblem(int status, String title, String detail) {
        this.status = status;
        members.put("type", "about:blank");
        members.put("title", title);
        members.put("status", status);
        members.put("detail", detail);
    }

    public static ApiProblem of(int status, String title, String detail) {
        return new ApiProblem(status, title, detail);
    }

    /** True for the addresses that answer with JSON and not with a page. */
    public static boolean concerns(String path) {
        return path.startsWith("/api/");
    }

    /** Names what is wrong field by field. */
    public ApiProblem errors(List<?> errors) {
        members.put("errors", errors);
        return this;
    }

    public Response answer() {
        return Response.status(status).type(TYPE).header("Cache-Control", "no-store").entity(members).build();
    }
}
