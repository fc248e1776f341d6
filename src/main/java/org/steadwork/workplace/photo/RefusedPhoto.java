package org.steadwork.workplace.photo;

/** A file that cannot be taken as a photograph; the message says why, in words for the person who sent it. */
public final class RefusedPhoto extends RuntimeException {

    RefusedPhoto(String message) {
        super(message);
    }
}
