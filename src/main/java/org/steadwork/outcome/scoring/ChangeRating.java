package org.steadwork.outcome.scoring;

/**
 * From where on a person's own rating of change says better or worse; what lies between says unchanged.
 *
 * @param betterFrom above 0
 * @param worseTo below 0
 * @param tag how sure the figures are: S seen in the source, M from memory
 */
public record ChangeRating(int betterFrom, int worseTo, String source, String tag) {

    public ChangeRating {
        if (betterFrom < 1 || worseTo > -1) {
            throw new IllegalArgumentException("A rating of change says better above 0 and worse below it, but not from " + betterFrom + " and "
                    + worseTo);
        }
    }
}
