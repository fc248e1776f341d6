package org.steadwork.web;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * Keeps requests out that another site's form could send. The framework asks every form for its token; a body of another kind comes in only
 * with the token in its header, or as JSON to the API, which no form can send and which stores nothing.
 */
class JsonOnlyApi {

    private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");

    @ConfigProperty(name = "quarkus.rest-csrf.token-header-name", defaultValue = "X-CSRF-TOKEN")
    String tokenHeader;

    @ServerRequestFilter
    public Response check(ContainerRequestContext request) {
        MediaType type = request.getMediaType();
        boolean form = is(type, MediaType.APPLICATION_FORM_URLENCODED_TYPE) || is(type, MediaType.MULTIPART_FORM_DATA_TYPE);
        if (SAFE.contains(request.getMethod()) || form || request.getHeaderString(tokenHeader) != null) {
            return null;
        }
        if (!ApiProblem.concerns(request.getUriInfo().getPath())) {
            return Response.status(400).build();
        }
        return is(type, MediaType.APPLICATION_JSON_TYPE) ? null
                : ApiProblem.of(415, "Not JSON", "Send the values as application/json.").answer();
    }

    private static boolean is(MediaType type, MediaType wanted) {
        return type != null && type.getType().equalsIgnoreCase(wanted.getType()) && type.getSubtype().equalsIgnoreCase(wanted.getSubtype());
    }
}
