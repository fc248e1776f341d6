package org.steadwork.review;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.steadwork.outcome.DueMeasures;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.Measures;
import org.steadwork.outcome.Score;
import org.steadwork.outcome.Scores;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Item;
import org.steadwork.web.Form;

/** What a review asks: what is due by its schedule, and nothing else; what was entered for the day already stays to be corrected. */
@ApplicationScoped
class Asked {

    @Inject
    DueMeasures due;

    @Inject
    Instruments instruments;

    @Inject
    Scores scores;

    /**
     * The questions of a visit.
     *
     * @param ratings the single ratings
     * @param own whether the own activities are asked
     * @param forms what is due and has a page of its own
     */
    record Questions(List<RatingRow> ratings, boolean own, List<DueMeasures.Due> forms) {

        public boolean none() {
            return ratings.isEmpty() && !own && forms.isEmpty();
        }
    }

    /**
     * One rating.
     *
     * @param meaning what is rated and which end is better
     * @param choices the answers in their order
     * @param stored what stands for the day, or null
     */
    record RatingRow(String field, String label, String meaning, List<String> choices, String stored) {

        static RatingRow of(Instrument instrument, Integer stored) {
            Item item = instrument.items().get(0);
            return new RatingRow("s_" + instrument.key(), instrument.label(), item.topic() + ", " + instrument.direction().words(),
                    IntStream.rangeClosed(item.min(), item.max()).mapToObj(RatingRow::shown).toList(), stored == null ? null : shown(stored));
        }

        private static String shown(int answer) {
            return String.valueOf(answer).replace('-', '\u2212');
        }
    }

    /**
     * Returns the questions of a day.
     *
     * @param typed the form as typed, whose ratings stay in sight, or null
     * @param ownRated whether own activities were rated on the day
     */
    Questions at(long caseId, LocalDate day, Form typed, boolean ownRated) {
        List<DueMeasures.Due> all = due.of(caseId, day);
        Set<String> keys = all.stream().map(DueMeasures.Due::key).collect(Collectors.toSet());
        Set<String> fields = typed == null ? Set.of() : Set.copyOf(typed.fields());
        Map<String, Score> ofDay = scores.of(caseId).stream().filter(score -> score.scoredOn().equals(day))
                .collect(Collectors.toMap(Score::instrument, score -> score));
        List<RatingRow> ratings = new ArrayList<>();
        for (Instrument instrument : instruments.all()) {
            if (instrument.items().size() == 1 && !instrument.key().equals(Measures.OWN_ACTIVITIES)) {
                String field = "s_" + instrument.key();
                Integer stored = ofDay.containsKey(instrument.key()) ? ofDay.get(instrument.key()).answers().get(0) : null;
                if (stored != null || keys.contains(instrument.key()) || fields.contains(field)) {
                    ratings.add(RatingRow.of(instrument, stored));
                }
            }
        }
        boolean own = ownRated || keys.contains(Measures.OWN_ACTIVITIES) || fields.stream().anyMatch(field -> field.startsWith("a_"));
        return new Questions(ratings, own, all.stream().filter(one -> !one.single()).toList());
    }
}
