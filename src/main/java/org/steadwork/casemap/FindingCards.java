package org.steadwork.casemap;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.CardKey;
import org.steadwork.casefile.CardKind;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.MapCard;
import org.steadwork.casefile.MapPart;
import org.steadwork.web.Dates;
import org.steadwork.workplace.Assessments;
import org.steadwork.workplace.Finding;
import org.steadwork.workplace.FindingStage;
import org.steadwork.workplace.Findings;
import org.steadwork.workplace.WorkplaceAssessment;
import org.steadwork.workplace.WorkplaceContent;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.Lenses;
import org.steadwork.workplace.fit.Verdict;

/** Lays on the map what was found at the work place, and what was advised, agreed or done about it. */
@ApplicationScoped
class FindingCards implements MapPart {

    @Inject
    Findings findings;

    @Inject
    Assessments assessments;

    @Inject
    WorkplaceContent content;

    @Override
    public List<MapCard> cards(CaseFile caseFile) {
        WorkplaceAssessment latest = assessments.latest(caseFile.id()).orElse(null);
        Map<String, Finding> byCriterion = new LinkedHashMap<>();
        findings.of(caseFile.id()).forEach(finding -> byCriterion.putIfAbsent(finding.criterionId(), finding));
        String href = CaseTab.WORK_PLACE.href(caseFile.id());
        List<MapCard> cards = new ArrayList<>();
        for (Finding finding : byCriterion.values()) {
            content.criterion(finding.criterionId()).ifPresent(criterion -> {
                cards.add(finding(finding, criterion, latest, href));
                if (finding.advisedOn() != null || finding.agreedOn() != null || finding.doneOn() != null) {
                    cards.add(action(finding, criterion, href));
                }
            });
        }
        if (latest != null) {
            cards.add(lookedAt(latest, byCriterion.values().stream().anyMatch(finding -> finding.checkedOn() == null), href));
        }
        return cards;
    }

    /** The rest of what was looked at, so that a work place without a finding is not taken for one nobody looked at. */
    private static MapCard lookedAt(WorkplaceAssessment latest, boolean anyOpen, String href) {
        return new MapCard(new CardKey(CardKind.FINDING, "looked-at"), "Looked at on " + Dates.shown(latest.assessedOn()),
                anyOpen ? "nothing else off" : "nothing off in what was looked at", null, null, href, true, Set.of(), null, Set.of());
    }

    private MapCard finding(Finding finding, Criterion criterion, WorkplaceAssessment latest, String href) {
        Set<BodyRegion> regions = criterion.regions().stream().map(BodyRegion::of).collect(Collectors.toSet());
        if (finding.checkedOn() != null) {
            return new MapCard(key(criterion), criterion.label(), "since " + Dates.shown(finding.checkedOn()), "done", "checked", href, true, regions,
                    null, Set.of());
        }
        boolean out = finding.verdict() == Verdict.OUT_OF_RANGE;
        Double hours = latest == null || latest.hoursAtScreen() == null ? null : latest.hoursAtScreen().doubleValue();
        Lenses lenses = latest == null ? Lenses.SINGLE_OR_NONE : latest.lenses();
        MapCard.Grounds grounds = new MapCard.Grounds(OutOfBand.times(finding, criterion, content.targets(), lenses), shown(finding, criterion), hours,
                criterion.evidence().name().toLowerCase(Locale.ROOT));
        return MapCard.finding(criterion.id(), criterion.label(), finding.deviation() == null ? "seen" : shown(finding, criterion), out ? "out" : "near",
                out ? "out of range" : "near the edge", href, regions, grounds);
    }

    private static CardKey key(Criterion criterion) {
        return new CardKey(CardKind.FINDING, criterion.id());
    }

    /** How far it is off, in its own unit; what was observed is said as it was graded. */
    private static String shown(Finding finding, Criterion criterion) {
        if (finding.deviation() == null) {
            return finding.verdict() == Verdict.OUT_OF_RANGE ? "seen, does not fit" : "seen, fits partly";
        }
        BigDecimal off = OutOfBand.upwards(criterion) ? finding.deviation() : finding.deviation().negate();
        return Amounts.signed(off.doubleValue(), criterion.unit()) + " from the aim";
    }

    private static MapCard action(Finding finding, Criterion criterion, String href) {
        boolean inPlace = finding.doneOn() != null;
        String line = inPlace ? "In place since " + Dates.shown(finding.doneOn())
                : finding.stage() == FindingStage.AGREED ? "Agreed with " + finding.agreedWith() + ", " + Dates.shown(finding.agreedOn())
                : "Advised on " + Dates.shown(finding.advisedOn() == null ? finding.stageOn() : finding.advisedOn());
        return MapCard.action("adjustment-" + finding.id(), criterion.adjustment(), line, href, inPlace, Set.of(), Set.of(key(criterion)));
    }
}
