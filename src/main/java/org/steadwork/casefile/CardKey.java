package org.steadwork.casefile;

import java.util.Optional;

/**
 * Names a card of the map for as long as the case lasts.
 *
 * @param ref what the feature that owns the card calls it, e.g. a zone of the body, a criterion, an adjustment;
 *            letters, digits, hyphen, underscore, point, 1 to 80 characters
 */
public record CardKey(CardKind kind, String ref) {

    private static final String REF = "[A-Za-z0-9_.-]{1,80}";

    public CardKey {
        if (kind == null || !ref.matches(REF)) {
            throw new IllegalArgumentException("A card is named by its kind and a plain reference, but was " + kind + " '" + ref + "'");
        }
    }

    /** As it stands in addresses and forms: {@code finding:CH-1}. */
    public String text() {
        return kind.key() + ":" + ref;
    }

    /** Reads what {@link #text()} writes; anything else is empty. */
    public static Optional<CardKey> parse(String text) {
        int colon = text.indexOf(':');
        if (colon < 0 || !text.substring(colon + 1).matches(REF)) {
            return Optional.empty();
        }
        for (CardKind kind : CardKind.values()) {
            if (text.substring(0, colon).equals(kind.key())) {
                return Optional.of(new CardKey(kind, text.substring(colon + 1)));
            }
        }
        return Optional.empty();
    }
}
