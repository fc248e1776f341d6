package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.workplace.fit.Deviation;
import org.steadwork.workplace.fit.EquipmentGain;
import org.steadwork.workplace.fit.FitResult;
import org.steadwork.workplace.fit.Verdict;

/** The two answers of the fit, each in a sentence or two: the best with what is there, and the best with changes. Null while it cannot be worked out. */
final class TwoAnswers {

    /** Half of the 5 mm to which a setting is given: what is nearer than this stays as it is. */
    private static final double CLOSEST = 2.5;

    private final RecordedWorkplace recorded;
    private final WorkplaceContent content;
    private final FitResult fit;

    TwoAnswers(RecordedWorkplace recorded, WorkplaceContent content) {
        this.recorded = recorded;
        this.content = content;
        this.fit = recorded.fit().orElse(null);
    }

    String withWhatIsThere() {
        if (fit == null) {
            return null;
        }
        if (!fit.serves()) {
            return "No setting frees the thighs. What can be had for what stands below, under Elbow or thigh.";
        }
        long moves = fit.steps().stream().filter(step -> !(Math.abs(step.change()) < CLOSEST)).count();
        if (off(fit.now()).isEmpty()) {
            return "All that was measured of it is in range as it stands." + (moves == 0 ? "" : moves == 1 ? " One setting could come nearer to the aim."
                    : " " + moves + " settings could come nearer to the aim.");
        }
        String settings = moves == 0 ? "Nothing to set: it stands as well as it can" : moves == 1 ? "One setting changes" : moves + " settings change";
        List<String> off = off(fit.proposed());
        return settings + (off.isEmpty() ? ". All that was measured of it is then in range." : ". Still off: " + String.join("; ", off) + ".");
    }

    String withChanges() {
        if (fit == null) {
            return null;
        }
        if (off(fit.proposed()).isEmpty() && fit.serves()) {
            return "Nothing needs to be bought.";
        }
        EquipmentGain best = fit.shortestList().or(() -> fit.gains().stream().findFirst()).orElse(null);
        if (best == null) {
            return "Nothing that can usually be had would remove the rest. It is a matter of what to put up with.";
        }
        List<String> off = off(best.deviations());
        String what = WorkplaceWords.of(best, content.targets().obtainable().footrest().high());
        return what + (off.isEmpty() ? ". Everything that was measured is then in range." : ". Still off: " + String.join("; ", off) + ".");
    }

    private List<String> off(Map<Deviation, Double> deviations) {
        List<String> off = new ArrayList<>();
        deviations.forEach((deviation, by) -> {
            Verdict verdict = content.targets().of(deviation, recorded.person().lenses()).verdict(by);
            if (verdict == Verdict.OUT_OF_RANGE || verdict == Verdict.NEAR_THE_EDGE) {
                off.add(WorkplaceWords.of(deviation).toLowerCase(Locale.ROOT) + ", " + WorkplaceWords.amount(deviation, by) + " (" + WorkplaceWords.of(verdict) + ")");
            }
        });
        return off;
    }
}
