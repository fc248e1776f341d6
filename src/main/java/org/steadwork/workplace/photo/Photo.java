package org.steadwork.workplace.photo;

/** A photograph as it is kept, with its thumbnail, both JPEG without metadata; sides in pixels. */
public record Photo(byte[] picture, byte[] thumbnail, int width, int height) {
}
