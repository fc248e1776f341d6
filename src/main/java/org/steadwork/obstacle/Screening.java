package org.steadwork.obstacle;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.Score;
import org.steadwork.outcome.Scores;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Scored;

/** The risk screen taken at intake, in neutral words. */
@ApplicationScoped
public class Screening {

    @Inject
    Scores scores;

    @Inject
    Instruments instruments;

    @Inject
    Obstacles obstacles;

    /**
     * The result of the latest screen.
     *
     * @param score as shown, with its bounds when items are missing
     * @param words neutral, what the result means; {@code plan} what it changes
     * @param raised whether it asks for more than usual care
     * @param settled false when missing items leave open what it means
     */
    public record Result(String label, LocalDate on, String score, String words, String plan, boolean raised, boolean settled) {
    }

    /** Returns the result of the latest screen of a case in one query; empty when none was taken. */
    public Optional<Result> of(long caseId) {
        return scores.latestOf(caseId, obstacles.screens()).flatMap(this::result);
    }

    /** Returns the result of the latest screen of every open case that has one, by the number of the case, in one query. */
    public Map<Long, Result> ofOpenCases() {
        Map<Long, Result> results = new HashMap<>();
        scores.latestOfOpenCases(obstacles.screens()).forEach(score -> result(score).ifPresent(result -> results.put(score.caseFile().id(), result)));
        return results;
    }

    private Optional<Result> result(Score score) {
        return instruments.find(score.instrument()).map(instrument -> {
            Scored scored = instrument.score(score.answers());
            String shown = score.value() != null ? plain(score.value()) : score.low() != null ? plain(score.low()) + " to " + plain(score.high()) : "no score";
            Optional<String> group = group(instrument, scored);
            Optional<Obstacles.Meaning> meaning = group.flatMap(name -> obstacles.meaning(instrument.key(), name));
            return new Result(instrument.label(), score.scoredOn(), shown, meaning.map(Obstacles.Meaning::words).orElse("not settled: items are missing"),
                    meaning.map(Obstacles.Meaning::plan).orElse("Ask the missing items."), group.filter(this::raised).isPresent(), group.isPresent());
        });
    }

    private static Optional<String> group(Instrument instrument, Scored scored) {
        if (!scored.groups().isEmpty()) {
            List<String> groups = scored.groups();
            return groups.size() == 1 ? Optional.of(groups.get(0)) : Optional.empty();
        }
        return scored.low().isEmpty() ? Optional.empty()
                : instrument.band(scored.low().getAsDouble(), scored.high().getAsDouble()).map(band -> band.label());
    }

    private boolean raised(String group) {
        return group.startsWith("high") || group.equals("medium");
    }

    private static String plain(double value) {
        return java.math.BigDecimal.valueOf(value).setScale(1, java.math.RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }
}
