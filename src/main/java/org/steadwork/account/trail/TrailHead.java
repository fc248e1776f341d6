package org.steadwork.account.trail;

/**
 * Where the sealed part of an audit trail ends.
 *
 * @param trail the name of this trail, made once, so that the end of another clinic's is not taken for it
 * @param sealed how many entries are sealed
 * @param hash the hash of the last of them
 */
public record TrailHead(String trail, long sealed, String hash) {
}
