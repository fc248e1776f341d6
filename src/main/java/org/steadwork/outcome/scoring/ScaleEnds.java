package org.steadwork.outcome.scoring;

/** Says when a baseline stands so near an end of its scale that a change in one direction cannot show. */
final class ScaleEnds {

    private ScaleEnds() {
    }

    /** Returns what the baseline cannot show, in a sentence; blank when it can show both. */
    static String caution(Instrument instrument, double baseline) {
        boolean lowerBetter = instrument.direction() == Direction.LOWER_BETTER;
        if (instrument.cannotImproveBelow().isPresent() && baseline < instrument.cannotImproveBelow().getAsDouble()) {
            return "A baseline under " + Plain.number(instrument.cannotImproveBelow().getAsDouble())
                    + " leaves no room to show improvement on this scale.";
        }
        if (instrument.cannotWorsenAbove().isPresent() && baseline > instrument.cannotWorsenAbove().getAsDouble()) {
            return "A baseline above " + Plain.number(instrument.cannotWorsenAbove().getAsDouble())
                    + " leaves no room to show worsening on this scale.";
        }
        if (baseline == instrument.lowest()) {
            return "A baseline at the lowest score leaves no room to show " + (lowerBetter ? "improvement." : "worsening.");
        }
        if (baseline == instrument.highest()) {
            return "A baseline at the highest score leaves no room to show " + (lowerBetter ? "worsening." : "improvement.");
        }
        return "";
    }
}
