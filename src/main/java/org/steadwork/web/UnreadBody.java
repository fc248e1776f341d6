package org.steadwork.web;

import java.io.IOException;

/** Tells a body that could not be read for what its sender did from a failure of ours; the framework's readers throw the same for both. */
final class UnreadBody {

    private static final String READER = "org.jboss.resteasy.reactive.server.vertx.VertxInputStream";
    private static final String FIELDS = "org.jboss.resteasy.reactive.server.core.multipart.FormData";

    private UnreadBody() {
    }

    /** Says whether the connection ended, or was cut for its length, while a body came in. Nobody reads the answer. */
    static boolean brokenOff(Throwable e) {
        return e instanceof IOException && thrownIn(e, READER);
    }

    /** Says whether a form holds more fields than are taken, 1000. */
    static boolean tooManyFields(Throwable e) {
        return e instanceof RuntimeException && thrownIn(e, FIELDS);
    }

    private static boolean thrownIn(Throwable e, String where) {
        return e.getStackTrace().length > 0 && e.getStackTrace()[0].getClassName().startsWith(where);
    }
}
