package org.steadwork.workplace;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.web.ReadOnce;
import org.steadwork.workplace.fit.CriterionResult;
import org.steadwork.workplace.fit.Verdict;

/** The findings of the cases; other features ask here what was found at a work place and what became of it. */
@ApplicationScoped
public class Findings implements PanacheRepository<Finding> {

    private static final String BY_ASSESSMENT = "A later look";

    @Inject
    Clock clock;

    /** Returns what was found in a case and not yet checked, what is furthest out first, then the earliest. */
    public List<Finding> open(long caseId) {
        return find("caseFile.id = ?1 and checkedOn is null order by case when verdict = ?2 then 0 else 1 end, foundOn, id", caseId,
                Verdict.OUT_OF_RANGE).list();
    }

    /** Returns all findings of a case, open ones first. */
    @ReadOnce
    public List<Finding> of(long caseId) {
        return find("caseFile.id = ?1 order by case when checkedOn is null then 0 else 1 end, foundOn, id", caseId).list();
    }

    public Optional<Finding> find(long caseId, long findingId) {
        return find("from Finding f join fetch f.caseFile where f.id = ?1 and f.caseFile.id = ?2", findingId, caseId).firstResultOptional();
    }

    /**
     * Brings the open findings in line with what an assessment found. A criterion out of range or near the edge opens a
     * finding or renews the open one. One that is now in range is checked by a later assessment; within the same
     * assessment it was a slip and goes, unless something already came of it. One that a clinician closed stays closed.
     */
    void follow(WorkplaceAssessment assessment, List<CriterionResult> results) {
        Map<String, Finding> known = new HashMap<>();
        for (Finding finding : of(assessment.caseFile().id())) {
            if (finding.checkedOn() == null || finding.assessment().id().equals(assessment.id())) {
                known.putIfAbsent(finding.criterionId(), finding);
            }
        }
        for (CriterionResult result : results) {
            Finding finding = known.get(result.criterion().id());
            boolean off = result.verdict() == Verdict.OUT_OF_RANGE || result.verdict() == Verdict.NEAR_THE_EDGE;
            if (off) {
                Finding kept = finding == null ? new Finding(assessment, result.criterion().id()) : finding;
                if (kept.verdict() == Verdict.IN_RANGE) {
                    openAgain(kept);
                }
                kept.judged(assessment, rounded(result.deviation()), rounded(result.giveOrTake()), result.verdict());
                persist(kept);
            } else if (finding != null && finding.checkedOn() == null) {
                noLongerOff(assessment, result, finding);
            }
        }
    }

    private void noLongerOff(WorkplaceAssessment assessment, CriterionResult result, Finding finding) {
        boolean sameLook = finding.assessment().id().equals(assessment.id());
        if (sameLook && finding.stage() == FindingStage.FOUND && steps(finding).isEmpty()) {
            delete(finding);
        } else if (result.verdict() == Verdict.IN_RANGE) {
            finding.judged(assessment, rounded(result.deviation()), rounded(result.giveOrTake()), result.verdict());
            LocalDate on = assessment.assessedOn().isBefore(finding.foundOn()) ? finding.foundOn() : assessment.assessedOn();
            FindingStep step = new FindingStep(finding, FindingStage.CHECKED, on, null);
            step.recorded(BY_ASSESSMENT, Instant.now(clock));
            finding.takes(step);
            getEntityManager().persist(step);
        }
    }

    /** Undoes the check that an assessment made, when that assessment is mended and finds it off after all. */
    private void openAgain(Finding finding) {
        List<FindingStep> steps = steps(finding);
        steps.stream().filter(step -> step.stage() == FindingStage.CHECKED && !step.undone())
                .forEach(step -> step.undo("The assessment was changed and finds it off after all", BY_ASSESSMENT, Instant.now(clock)));
        finding.follows(steps);
    }

    private List<FindingStep> steps(Finding finding) {
        return getEntityManager().createQuery("from FindingStep where finding = ?1 order by id", FindingStep.class).setParameter(1, finding)
                .getResultList();
    }

    private static BigDecimal rounded(double value) {
        return Double.isNaN(value) ? null : BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP);
    }
}
