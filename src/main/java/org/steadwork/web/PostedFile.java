package org.steadwork.web;

/**
 * A file that was sent with a form.
 *
 * @param bytes all of it, or as many as were asked for and one more when it is longer
 */
public record PostedFile(byte[] bytes) {
}
