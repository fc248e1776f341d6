package org.steadwork.casefile;

import java.util.Set;
import org.steadwork.body.BodyRegion;

/**
 * One card of the map.
 *
 * @param line    one line under the title, e.g. "worst 6 of 10" or "140 min"; may be blank
 * @param state   modifier of the status class that stands before the line (in, near, out, none, open, done), or null
 * @param word    the word of that state, or null
 * @param href    the page where the card comes from
 * @param settled an action in place, or a finding that is in range: drawn quietly and never a candidate; in range without
 *                regions is what was looked at and fits, and has no letter
 * @param regions the regions of the body it is about; empty when none
 * @param grounds of a finding: what makes it a candidate; null for every other card and for a finding in range
 * @param answers of an action: the findings it was agreed for; empty otherwise
 */
public record MapCard(CardKey key, String title, String line, String state, String word, String href, boolean settled,
        Set<BodyRegion> regions, Grounds grounds, Set<CardKey> answers) {

    /**
     * What makes a finding a candidate for a link.
     *
     * @param deviation  how far it is out of its band, as a multiple of the width that is only a little off; more than 0,
     *                   so that 1 stands at the edge to "out of range"; an observed criterion has 0.5 for partly and 1.5 for not met
     * @param shown      the same in its own unit, e.g. "150 mm low"
     * @param hoursADay  hours a day the person is exposed, in [0, 24]; null when not recorded, which is not zero
     * @param evidence   grade of the evidence that such a finding is associated with complaints there: e0, e1, e2, e3
     */
    public record Grounds(double deviation, String shown, Double hoursADay, String evidence) {

        public Grounds {
            if (!(deviation > 0 && Double.isFinite(deviation))) {
                throw new IllegalArgumentException("A deviation is more than 0, but was " + deviation);
            }
            if (hoursADay != null && !(hoursADay >= 0 && hoursADay <= 24)) {
                throw new IllegalArgumentException("Hours a day lie in [0, 24], but were " + hoursADay);
            }
        }
    }

    public MapCard {
        regions = Set.copyOf(regions);
        answers = Set.copyOf(answers);
    }

    /** A card of a place that hurts. */
    public static MapCard symptom(String ref, String title, String line, String href, Set<BodyRegion> regions) {
        return new MapCard(new CardKey(CardKind.SYMPTOM, ref), title, line, null, null, href, false, regions, null, Set.of());
    }

    /** A card of a finding out of its band. */
    public static MapCard finding(String ref, String title, String line, String state, String word, String href, Set<BodyRegion> regions,
            Grounds grounds) {
        return new MapCard(new CardKey(CardKind.FINDING, ref), title, line, state, word, href, false, regions, grounds, Set.of());
    }

    /** Returns this card with a state before its line. */
    public MapCard in(String state, String word) {
        return new MapCard(key, title, line, state, word, href, settled, regions, grounds, answers);
    }

    /** A card of something that is done about it; {@code inPlace} once it is there and needs nothing more. */
    public static MapCard action(String ref, String title, String line, String href, boolean inPlace, Set<BodyRegion> regions,
            Set<CardKey> answers) {
        return new MapCard(new CardKey(CardKind.ACTION, ref), title, line, null, null, href, inPlace, regions, null, answers);
    }
}
