package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.steadwork.casefile.CaseFile;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.InvalidAnswer;
import org.steadwork.outcome.scoring.Item;
import org.steadwork.outcome.scoring.ItemAnswers;
import org.steadwork.web.Form;

/** Reads single ratings and ratings of own activities from a form, and stores them; a field that was not sent is left alone. */
@ApplicationScoped
public class RatingForm {

    /** What a scale sends when nothing is chosen. */
    public static final String NOT_ASKED = "not_asked";

    @Inject
    Instruments instruments;

    @Inject
    Scores scores;

    @Inject
    OwnActivityRatings activities;

    /** What was typed: null for an emptied field. */
    public record Ratings(Map<Instrument, Integer> singles, Map<OwnActivity, Integer> activities) {

        /** True when nothing at all is rated. */
        public boolean none() {
            return singles.values().stream().allMatch(v -> v == null) && activities.values().stream().allMatch(v -> v == null);
        }
    }

    /** Reads the fields s_KEY and a_ID; notes an error in the words of the item for what it cannot be answered with. */
    public Ratings read(Form form, long caseId) {
        Map<Instrument, Integer> singles = new LinkedHashMap<>();
        Map<OwnActivity, Integer> rated = new LinkedHashMap<>();
        for (String field : form.fields()) {
            if (field.startsWith("s_")) {
                instruments.find(field.substring(2)).filter(instrument -> instrument.items().size() == 1).ifPresent(instrument -> {
                    Item item = instrument.items().get(0);
                    singles.put(instrument, read(form, field, new Item(1, instrument.label(), item.min(), item.max())));
                });
            }
        }
        for (OwnActivity activity : activities.activities(caseId)) {
            String field = "a_" + activity.id();
            if (form.fields().contains(field)) {
                rated.put(activity, read(form, field, new Item(1, activity.words(), 0, 10)));
            }
        }
        return new Ratings(singles, rated);
    }

    /** Stores what was read for a day. */
    public void store(CaseFile file, LocalDate on, Ratings ratings) {
        ratings.singles().forEach((instrument, answer) -> scores.record(file, instrument, on, Collections.singletonList(answer)));
        ratings.activities().forEach((activity, rating) -> activities.rate(activity, on, rating));
    }

    private static Integer read(Form form, String field, Item item) {
        try {
            return form.is(field, NOT_ASKED) ? null : ItemAnswers.read(item, form.value(field));
        } catch (InvalidAnswer refused) {
            form.error(field, refused.getMessage().replaceFirst("^Item 1 \\((.*)\\) must", "$1 must"));
            return null;
        }
    }
}
