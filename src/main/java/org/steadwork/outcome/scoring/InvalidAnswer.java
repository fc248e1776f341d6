package org.steadwork.outcome.scoring;

/** An answer that an item cannot have; the message names the item, its range and what was entered. */
public final class InvalidAnswer extends RuntimeException {

    private final int itemNumber;

    InvalidAnswer(Item item, String entered) {
        super("Item " + item.number() + " (" + item.topic() + ") must be a whole number from " + signed(item.min()) + " to "
                + signed(item.max()) + ", or left empty. You entered \"" + entered + "\".");
        this.itemNumber = item.number();
    }

    public int itemNumber() {
        return itemNumber;
    }

    private static String signed(int number) {
        return number < 0 ? "\u2212" + -number : Integer.toString(number);
    }
}
