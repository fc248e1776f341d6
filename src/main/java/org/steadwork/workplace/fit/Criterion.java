package org.steadwork.workplace.fit;

import java.util.List;

/**
 * One rule of the assessment, from content. Exactly one of three kinds: the fit works it out, it is measured on its own
 * bands, or it is observed.
 *
 * @param unit of its value; empty when observed
 * @param deviation which deviation of the fit it judges; null otherwise
 * @param lenses the lenses it is for; null for any
 * @param reads key of the measurement it judges; its id unless content says otherwise
 * @param bands its own bands; null unless measured (or worked out beside the fit, as the gaze angle is)
 * @param status where the bands come from: PROP our proposal, V, S, M, CP as for a source; empty without bands
 * @param regions keys of the body regions it may contribute to
 * @param also what else it may concern, such as the eyes; empty for nothing
 * @param evidenceNote the evidence in the words of its source, where a grade says too little; empty otherwise
 */
public record Criterion(String id, String group, String label, Kind kind, String measured, String target, String unit, Deviation deviation,
        Lenses lenses, String reads, Bands bands, String status, List<String> regions, String also, Evidence evidence, String evidenceNote,
        String adjustment, String source) {

    public Criterion {
        if ((kind == Kind.FIT) != (deviation != null) || (kind == Kind.MEASURED || kind == Kind.GAZE) != (bands != null)) {
            throw new IllegalArgumentException(id + " must be worked out, measured or observed, with what that needs");
        }
        regions = List.copyOf(regions);
    }

    /** How a criterion is judged. */
    public enum Kind {
        FIT, GAZE, MEASURED, OBSERVED
    }

    /**
     * The bands of a measured criterion.
     *
     * @param aim the value wished for; NaN when the band itself is the aim
     */
    public record Bands(double aim, Band green, Band amber) {

        public Bands {
            if (!amber.encloses(green) || !Double.isNaN(aim) && !green.contains(aim)) {
                throw new IllegalArgumentException("The aim must lie in the green band, and that in the amber one");
            }
        }

        /** Returns value − aim, or, without an aim, the signed distance to the green band (0 inside). */
        public double deviation(double value) {
            return Double.isNaN(aim) ? value - green.clip(value) : value - aim;
        }
    }
}
