package org.steadwork.exchange.report;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.steadwork.web.ApiProblem;

/** Says on the routes for reporting that a token is wanted, where elsewhere one is asked to sign in. Source: RFC 6750. */
class BearerAsked {

    @ServerResponseFilter
    void say(ContainerRequestContext request, ContainerResponseContext response) {
        if (response.getStatus() == 401 && request.getUriInfo().getPath().startsWith(ReportApi.FOLDER)) {
            response.getHeaders().putSingle("WWW-Authenticate", "Bearer");
            response.setEntity(ApiProblem.of(401, "No token that holds", "Send a token of this clinic as Authorization: Bearer; it may have run out or been revoked.").answer()
                    .getEntity(), null, MediaType.valueOf(ApiProblem.TYPE));
        }
    }
}
