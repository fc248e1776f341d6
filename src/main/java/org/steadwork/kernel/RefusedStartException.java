package org.steadwork.kernel;

/** What keeps the clinic from starting, or a command from running; the message says it in words for the person at the console. */
public class RefusedStartException extends RuntimeException {

    public RefusedStartException(String message) {
        super(message);
    }

    public RefusedStartException(String message, Throwable cause) {
        super(message, cause);
    }
}
