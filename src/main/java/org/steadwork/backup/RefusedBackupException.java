package org.steadwork.backup;

/** A backup that cannot be made or taken; the message says why and what to do, in words for the person at the console or page. */
public class RefusedBackupException extends RuntimeException {

    public RefusedBackupException(String message) {
        super(message);
    }

    public RefusedBackupException(String message, Throwable cause) {
        super(message, cause);
    }
}
