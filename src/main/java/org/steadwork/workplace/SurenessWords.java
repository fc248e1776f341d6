package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.How;
import org.steadwork.workplace.fit.Part;
import org.steadwork.workplace.fit.Spread;

/** Says how sure the proposed settings are, given the errors of the measures they rest on. */
final class SurenessWords {

    /** Half of the 5 mm to which a setting is given: less than that is not worth saying. */
    private static final double WORTH_SAYING = 2.5;

    private final RecordedWorkplace recorded;

    SurenessWords(RecordedWorkplace recorded) {
        this.recorded = recorded;
    }

    /** Says where the settings lie in 95 of 100 draws when one of them rests on an estimate; empty otherwise. */
    Optional<String> words() {
        if (!anyEstimated()) {
            return Optional.empty();
        }
        return recorded.sureness().map(sureness -> {
            List<String> parts = new ArrayList<>();
            for (Part part : new Part[] {Part.SEAT, Part.DESK, Part.SCREEN_TOP, Part.SEAT_DEPTH}) {
                Spread spread = sureness.settings().get(part);
                if (spread != null && spread.giveOrTake() > WORTH_SAYING) {
                    parts.add(WorkplaceWords.of(part).toLowerCase(Locale.ROOT) + " "
                            + Numerals.settings(spread.low(), spread.high()));
                }
            }
            String where = parts.isEmpty() ? "the settings stay as they are" : "the best setting lies within: " + String.join("; ", parts);
            return "Some of the measures are estimated. For 95 of 100 people with such measures " + where + ".";
        });
    }

    private boolean anyEstimated() {
        return List.of(BodyMeasure.values()).stream().anyMatch(measure -> recorded.person().measure(measure).how() == How.ESTIMATED);
    }
}
