package org.steadwork.web;

import jakarta.inject.Inject;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.container.ContainerRequestContext;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** Tells {@link ReadOnce} which requests only read: GET changes nothing in a record. */
class PageReading {

    @Inject
    PageAnswers answers;

    @ServerRequestFilter
    void begin(ContainerRequestContext request) {
        if (HttpMethod.GET.equals(request.getMethod())) {
            answers.read();
        }
    }
}
