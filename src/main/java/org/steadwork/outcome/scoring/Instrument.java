package org.steadwork.outcome.scoring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A way of measuring: its items by number, its scoring rule, its scale and what is known about change on it.
 *
 * @param key name in content and in stored scores, unique
 * @param version of the form; scores of two versions never make one series
 * @param unit written after a value, for example %, or blank for points
 * @param regions keys of the body regions it is meant for; empty for any
 * @param use what it is for; only on an outcome is change judged
 * @param decimals how many decimals a score is shown with, 0 to 2; with 0, a score that is not whole shows one
 * @param form where the wording of the items comes from
 * @param changeRating for a rating of change by the person: from where on it says better or worse
 * @param cannotImproveBelow baseline under which the scale cannot show improvement; empty when not known
 * @param cannotWorsenAbove baseline above which it cannot show worsening
 * @param everyDays how often it is due, in days; 0 for once at the start of care
 * @param loinc the LOINC code of the score, blank when none is confirmed
 * @param onPhone how it is asked on the patient's own page; empty for an instrument that is never shown there
 */
public record Instrument(String key, String name, String label, String version, String unit, List<String> regions, List<Item> items,
        ScoringRule rule, Direction direction, double lowest, double highest, Use use, int decimals,
        Form form, Optional<ChangeRating> changeRating, List<Band> bands,
        List<Threshold> thresholds, OptionalDouble cannotImproveBelow, OptionalDouble cannotWorsenAbove, int everyDays,
        String scheduleWords, String permission, String source, String loinc, List<String> notes, Optional<PhoneWords> onPhone) {

    /** What an instrument is for. */
    public enum Use {
        /** Taken again and again; change on it is judged. */
        OUTCOME,
        /** Asked once, to see a risk. */
        SCREEN,
        /** The person's own word on the change. */
        CHANGE_RATING,
        /** Says where something is, with no total. */
        SURVEY
    }

    /** Where the wording comes from, and the notice that stands where answers are entered. */
    public enum Form {
        OWN_WORDS("Asked in words of our own."),
        OFFICIAL_FORM("The wording belongs to its owner and is not shown here. The person fills in the official form, which the clinic must hold; "
                + "key in its numbers."),
        LICENSED_FORM("Needs a licence of its owner; not even its items are named here. The person fills in the licensed form, which the clinic "
                + "must hold; key in its numbers.");

        private final String notice;

        Form(String notice) {
            this.notice = notice;
        }

        public String notice() {
            return notice;
        }
    }

    public Instrument {
        regions = List.copyOf(regions);
        items = List.copyOf(items);
        bands = List.copyOf(bands);
        thresholds = List.copyOf(thresholds);
        notes = List.copyOf(notes);
        if (onPhone.isPresent() && form != Form.OWN_WORDS) {
            throw new IllegalArgumentException("The wording belongs to its owner: it is not asked on a phone");
        }
        if (onPhone.isPresent() && onPhone.get().asks().size() != items.size()) {
            throw new IllegalArgumentException("There are " + items.size() + " items, but " + onPhone.get().asks().size() + " questions for the phone");
        }
    }

    public boolean forRegion(String region) {
        return regions.isEmpty() || regions.contains(region);
    }

    /** True when change on it is judged. */
    public boolean outcome() {
        return use == Use.OUTCOME;
    }

    /**
     * Scores raw answers in the order of the items, null for an item without one.
     *
     * @throws InvalidAnswer for an answer out of the range of its item, and for one more than there are items
     */
    public Scored score(List<Integer> answers) {
        return rule.score(ItemAnswers.of(items, answers));
    }

    /** Returns the band a score falls in, if the instrument has bands. */
    public Optional<Band> band(double score) {
        return bands.stream().filter(band -> score <= band.highest() + ChangeVerdict.ROUNDING).findFirst();
    }

    /** Returns the band that every value between two bounds falls in; empty when they fall in different ones. */
    public Optional<Band> band(double low, double high) {
        return band(low).filter(band -> band(high).filter(band::equals).isPresent());
    }

    /** Returns the names of the groups or bands that a result allows: one, several when missing answers leave it open, or none. */
    public List<String> groups(Scored scored) {
        if (!scored.groups().isEmpty() || scored.low().isEmpty()) {
            return scored.groups();
        }
        double low = scored.low().getAsDouble();
        double high = scored.high().getAsDouble();
        Optional<Band> first = band(low);
        Optional<Band> last = band(high);
        return bands.stream().filter(band -> first.isPresent() && last.isPresent() && bands.indexOf(band) >= bands.indexOf(first.get())
                && bands.indexOf(band) <= bands.indexOf(last.get())).map(Band::label).toList();
    }

    /** Returns the error threshold for the verdict in a region: the region's own if there is one, else the general one. */
    public Optional<Threshold> error(String region, double baseline) {
        return amounts().leading(Threshold.Kind.ERROR, region, baseline);
    }

    /** Returns the importance threshold for the verdict in a region at a baseline. */
    public Optional<Threshold> importance(String region, double baseline) {
        return amounts().leading(Threshold.Kind.IMPORTANCE, region, baseline);
    }

    /** Returns every threshold of a kind that applies in a region, smallest first: what the literature ranges over. */
    public List<Threshold> range(Threshold.Kind kind, String region, double baseline) {
        return amounts().range(kind, region, baseline);
    }

    /** Returns the published amounts of change. */
    public Thresholds amounts() {
        return new Thresholds(thresholds);
    }
}
