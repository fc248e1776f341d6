package org.steadwork.outcome.scoring;

/** An answer that an item cannot have; the message names the item, its range and what was entered. */
public final class InvalidAnswer extends RuntimeException {

    private final int itemNumber;

    InvalidAnswer(Item item, String entered) {
        super(item.named() + " must be a whole number from " + signed(item.min()) + " to "
                + signed(item.max()) + ", or left empty. You entered \"" + entered + "\".");
        this.itemNumber = item.number();
    }

    private InvalidAnswer(String message, int itemNumber) {
        super(message);
        this.itemNumber = itemNumber;
    }

    static InvalidAnswer contradiction(Item yes, Item no) {
        return new InvalidAnswer(yes.named() + " is yes, but item " + no.number() + " of the same region is no. Ask again.", yes.number());
    }

    static InvalidAnswer tooMany(int items, int answers) {
        return new InvalidAnswer("There are " + items + " items, numbered 1 to " + items + ", but " + answers + " answers: item " + (items + 1)
                + " does not exist.", items + 1);
    }

    public int itemNumber() {
        return itemNumber;
    }

    private static String signed(int number) {
        return number < 0 ? "\u2212" + -number : Integer.toString(number);
    }
}
