package org.steadwork.caseload.statistics;

/**
 * From how many people on a count may leave the clinic. Published practice differs: under 10 withheld in one public health guideline,
 * 5 or 3 in statistical offices; ten is our setting, a proposal (PROP).
 *
 * @param fewest smallest count shown, at least 3; 1 to fewest − 1 are withheld. Below 3 is refused: of two people each knows the other
 * @param columns what the columns stand for
 */
public record SmallNumbers(int fewest, Columns columns) {

    /** The setting for everything that leaves the clinic. */
    public static final int USUAL_FEWEST = 10;

    /** What a column tells of the people counted in it. */
    public enum Columns {
        /** Only where they belong, as a site or department: everyone there knows that already. */
        PLACES,
        /** Something about them, as a region in pain: a row whose people all stand in one column tells it of each of them. */
        FACTS
    }

    public SmallNumbers {
        if (!(fewest >= 3)) {
            throw new IllegalArgumentException("The smallest count shown must be at least 3, but was " + fewest);
        }
    }

    boolean isSmall(int count) {
        return Math.abs(count) >= 1 && Math.abs(count) < fewest;
    }
}
