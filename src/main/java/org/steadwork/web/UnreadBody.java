package org.steadwork.web;

import java.io.IOException;

/** Tells a body that could not be read for what its sender did from a failure of ours; the framework's readers throw the same for both. */
final class UnreadBody {

    private static final String READER = "org.jboss.resteasy.reactive.server.vertx.VertxInputStream";
    private static final String PARTS = "org.jboss.resteasy.reactive.server.core.multipart.MultiPartParserDefinition";
    private static final String FIELDS = "org.jboss.resteasy.reactive.server.core.multipart.FormData";

    private static final String DECODER = "org.jboss.resteasy.reactive.common.util.URLUtils";

    private UnreadBody() {
    }

    /** Says whether the connection ended, or was cut for its length, while a body came in, or a body of parts stops before its last. */
    static boolean brokenOff(Throwable e) {
        return e instanceof IOException && (thrownIn(e, READER) || thrownIn(e, PARTS));
    }

    /** Says whether a form holds more fields than are taken, 1000. */
    static boolean tooManyFields(Throwable e) {
        return e instanceof RuntimeException && thrownIn(e, FIELDS);
    }

    /** Says whether a form is not encoded as forms are: a percent sign without its two digits, or bytes that are no text. */
    static boolean notDecodable(Throwable e) {
        return e instanceof IllegalArgumentException && thrownIn(e, DECODER);
    }

    private static boolean thrownIn(Throwable e, String where) {
        return e.getStackTrace().length > 0 && e.getStackTrace()[0].getClassName().startsWith(where);
    }
}
