package org.steadwork.content;

/** A wrong entry in the clinical content: names the file, the line and the reason, and stops the start. */
public final class ContentException extends RuntimeException {

    ContentException(String file, int line, String reason) {
        super(file + ", line " + line + ": " + reason);
    }
}
