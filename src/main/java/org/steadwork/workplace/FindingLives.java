package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steadwork.account.CurrentAccount;
import org.steadwork.web.Dates;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.CriterionResult;
import org.steadwork.workplace.fit.Deviation;
import org.steadwork.workplace.fit.Verdict;

/** Records what becomes of findings, undoes mistaken steps, and tells the effect once a later assessment has measured it. */
@ApplicationScoped
public class FindingLives {

    @Inject
    EntityManager db;

    @Inject
    Assessments assessments;

    @Inject
    WorkplaceContent content;

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    /** Returns the steps of a finding in the order in which they were recorded. */
    List<FindingStep> steps(Finding finding) {
        return db.createQuery("from FindingStep where finding = ?1 order by id", FindingStep.class).setParameter(1, finding).getResultList();
    }

    /**
     * Records a step; call within a transaction.
     *
     * @param with who agreed; needed for {@link FindingStage#AGREED}, left out otherwise
     */
    public void record(Finding finding, FindingStage stage, LocalDate on, String with) {
        record(finding, stage, on, with, account.displayName());
    }

    /**
     * Records a step for somebody; call within a transaction.
     *
     * @param by who records it, as shown
     */
    public void record(Finding finding, FindingStage stage, LocalDate on, String with, String by) {
        FindingStep step = new FindingStep(finding, stage, on, stage == FindingStage.AGREED ? with : null);
        step.recorded(by, Instant.now(clock));
        finding.takes(step);
        db.persist(step);
    }

    /** Returns the step that may be undone: the last one that still stands. */
    Optional<FindingStep> last(List<FindingStep> steps) {
        return steps.stream().filter(step -> !step.undone()).reduce((one, next) -> next);
    }

    void undo(Finding finding, FindingStep step, List<FindingStep> steps, String reason) {
        step.undo(reason, account.displayName(), Instant.now(clock));
        finding.follows(steps);
    }

    /** Takes four queries, however many assessments there are. */
    FindingLife of(Finding finding) {
        List<FindingStep> steps = steps(finding);
        List<FindingLife.Step> shown = new ArrayList<>(steps.stream().map(FindingLives::shown).toList());
        Collections.reverse(shown);
        Criterion criterion = content.criterion(finding.criterionId()).orElse(null);
        List<RecordedWorkplace> looks = criterion == null ? List.of() : assessments.allRecorded(finding.caseFile().id()).stream()
                .filter(look -> !look.assessment().assessedOn().isBefore(finding.foundOn()))
                .sorted(Comparator.comparing((RecordedWorkplace look) -> look.assessment().assessedOn()).thenComparing(look -> look.assessment().id())).toList();
        List<FindingLife.Look> rows = new ArrayList<>();
        List<Measured> measured = new ArrayList<>();
        for (RecordedWorkplace look : looks) {
            CriterionResult result = look.results().stream().filter(r -> r.criterion().id().equals(finding.criterionId())).findFirst().orElseThrow();
            Measured now = new Measured(look.assessment().assessedOn(), result);
            rows.add(row(criterion, now, measured.isEmpty() ? null : measured.get(measured.size() - 1)));
            if (result.verdict() != Verdict.NOT_LOOKED_AT) {
                measured.add(now);
            }
        }
        return new FindingLife(shown, rows, effect(finding, criterion, measured), last(steps).map(FindingStep::id).orElse(null));
    }

    private record Measured(LocalDate on, CriterionResult result) {
    }

    private static FindingLife.Step shown(FindingStep step) {
        return new FindingLife.Step(WorkplaceWords.capital(step.stage().label()), Dates.shown(step.steppedOn()), step.agreedWith(),
                step.recordedBy() == null ? null : step.recordedBy() + (step.recordedAt() == null ? "" : ", " + Dates.shown(step.recordedAt())),
                step.undone() ? step.undoneBy() + ", " + Dates.shown(step.undoneAt()) + ": " + step.undoReason() : null);
    }

    private static FindingLife.Look row(Criterion criterion, Measured now, Measured before) {
        CriterionResult result = now.result();
        boolean number = !Double.isNaN(result.deviation());
        boolean both = number && before != null && !Double.isNaN(before.result().deviation());
        return new FindingLife.Look(Dates.shown(now.on()), number ? signed(criterion, result.deviation()) : "–", WorkplaceWords.of(result.verdict()),
                WorkplaceWords.state(result.verdict()), both ? signed(criterion, result.deviation() - before.result().deviation()) : "–");
    }

    /** A screen drop counts downwards; shown, more is higher as for everything else. */
    static String signed(Criterion criterion, double value) {
        return Numerals.signedWith(criterion.deviation() == Deviation.SCREEN_DROP ? -value : value, criterion.unit()) + (criterion.unit().equals("°") ? "" : "\u00a0") + criterion.unit();
    }

    private static String effect(Finding finding, Criterion criterion, List<Measured> measured) {
        if (measured.size() < 2) {
            return finding.doneOn() == null ? "Not measured again yet." : "Done, and not measured again yet: assess the work place again to know the effect.";
        }
        Measured first = measured.get(0);
        Measured last = measured.get(measured.size() - 1);
        String when = finding.doneOn() == null ? "Nothing is recorded as done" : last.on().isBefore(finding.doneOn())
                ? "The last look was before it was done" : "Measured after it was done";
        if (Double.isNaN(first.result().deviation()) || Double.isNaN(last.result().deviation())) {
            return "From " + WorkplaceWords.of(first.result().verdict()) + " on " + Dates.shown(first.on()) + " to "
                    + WorkplaceWords.of(last.result().verdict()) + " on " + Dates.shown(last.on()) + ". " + when + ".";
        }
        double nearer = Math.abs(first.result().deviation()) - Math.abs(last.result().deviation());
        String unit = criterion.unit();
        String moved = Math.abs(nearer) < 0.05 ? "no nearer and no further" : Numerals.with(Math.abs(nearer), unit) + (nearer > 0 ? " nearer to the aim" : " further from the aim");
        return "From " + signed(criterion, first.result().deviation()) + " (" + WorkplaceWords.of(first.result().verdict()) + ") on " + Dates.shown(first.on())
                + " to " + signed(criterion, last.result().deviation()) + " (" + WorkplaceWords.of(last.result().verdict()) + ") on " + Dates.shown(last.on())
                + ": " + moved + ". " + when + ".";
    }
}
