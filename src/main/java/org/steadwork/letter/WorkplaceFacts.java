package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.steadwork.casefile.CaseFile;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;
import org.steadwork.workplace.Adjustment;
import org.steadwork.workplace.Assessments;
import org.steadwork.workplace.Finding;
import org.steadwork.workplace.Findings;
import org.steadwork.workplace.WorkplaceAssessment;
import org.steadwork.workplace.WorkplaceContent;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.Part;

/** What was found at the work place and which settings were proposed, in terms of things and millimetres, never of the body. */
@ApplicationScoped
class WorkplaceFacts implements LetterFacts {

    /** Half of the 5 mm to which a setting is told: closer than this is no change. */
    private static final BigDecimal CLOSEST = new BigDecimal("2.5");

    /** How a change, or a thing to buy, is called in a letter. */
    private static final Map<Part, String> CHANGES = Map.of(Part.SEAT_DEPTH, "Seat depth", Part.SEAT, "Seat height", Part.DESK, "Desk height",
            Part.ARMREST, "Armrests above the seat", Part.SCREEN_TOP, "Top of the screen", Part.DISTANCE, "Distance to the screen");
    private static final Map<Part, String> THINGS = Map.of(Part.FOOTREST, "Footrest\tso that the seat can be set for the desk",
            Part.CUSHION, "Backrest cushion\tso that the whole backrest can be used");

    @Inject
    Findings findings;

    @Inject
    Assessments assessments;

    @Inject
    WorkplaceContent content;

    @Override
    public List<LetterFact> of(CaseFile file) {
        List<LetterFact> facts = new ArrayList<>();
        for (Finding finding : findings.open(file.id())) {
            content.criterion(finding.criterionId()).ifPresent(criterion -> facts.add(finding(finding, criterion)));
        }
        assessments.latest(file.id()).ifPresent(assessment -> proposed(assessment, facts));
        return facts;
    }

    private static LetterFact finding(Finding finding, Criterion criterion) {
        return new LetterFact(InformationCategory.WORKSTATION_FINDINGS, "workplace", row(finding, criterion), "work place, found " + Dates.shown(finding.foundOn()));
    }

    /** Returns what was looked at, what is advised and how far it has come, as a row of a table. */
    static String row(Finding finding, Criterion criterion) {
        return criterion.label() + "\t" + criterion.adjustment() + "\t" + finding.stage().label() + " " + Dates.inLetter(finding.stageOn());
    }

    private void proposed(WorkplaceAssessment assessment, List<LetterFact> facts) {
        String because = "proposed settings of " + Dates.shown(assessment.assessedOn());
        for (Adjustment adjustment : assessments.proposed(assessment.id())) {
            if (THINGS.containsKey(adjustment.part())) {
                if (adjustment.proposedMm().signum() > 0) {
                    facts.add(new LetterFact(InformationCategory.WORKSTATION_FINDINGS, "equipment",
                            THINGS.get(adjustment.part()) + "\t" + mm(adjustment.proposedMm()) + "\t", because));
                }
            } else if (CHANGES.containsKey(adjustment.part()) && !stays(adjustment)) {
                String from = adjustment.foundMm() == null ? "" : ", now " + mm(adjustment.foundMm());
                facts.add(new LetterFact(InformationCategory.WORK_MODIFICATIONS, "modifications",
                        CHANGES.get(adjustment.part()) + "\t" + mm(adjustment.proposedMm()) + from + "\t\t", because));
            }
        }
    }

    /** Whether the setting is as good as what it is already: what the page of the work place calls "as now". */
    private static boolean stays(Adjustment adjustment) {
        return adjustment.foundMm() != null && adjustment.foundMm().subtract(adjustment.proposedMm()).abs().compareTo(CLOSEST) < 0;
    }

    private static String mm(BigDecimal value) {
        return value.setScale(0, RoundingMode.HALF_UP).toPlainString() + "\u00a0mm";
    }
}
