package org.steadwork.account;

import jakarta.inject.Inject;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Holds an answer back until the views it shows are noted; when one cannot be noted, the answer is an error instead. */
class NotedBeforeSent {

    @Inject
    AwaitedNotes notes;

    @ServerResponseFilter
    void await() {
        notes.await();
    }
}
