package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steadwork.account.ViewNotes;
import org.steadwork.web.Dates;

/** Opens a case for a page: finds it or answers 404, notes the view in the audit trail, gathers rail and cautions. */
@ApplicationScoped
public class CaseHeads {

    @Inject
    CaseFiles cases;

    @Inject
    @Any
    Instance<CasePart> parts;

    @Inject
    ViewNotes views;

    @Inject
    Clock clock;

    /** Opens a case for a page that shows it; the view is noted. */
    public CaseHead open(long caseId, CaseTab tab) {
        CaseFile file = find(caseId);
        views.begin("viewed " + tab.label().toLowerCase(Locale.ROOT), file.patient().id(), caseId);
        return head(file, tab);
    }

    /** Finds a case for a page that changes it; the change itself is noted by the page. */
    public CaseFile find(long caseId) {
        return cases.withPeople(caseId).orElseThrow(NotFoundException::new);
    }

    /** Gathers the head for a page shown again after an error. */
    public CaseHead head(CaseFile file, CaseTab tab) {
        List<CaseHead.NavItem> nav = Arrays.stream(CaseTab.values()).map(t -> new CaseHead.NavItem(t.label(), t.href(file.id()), t == tab,
                parts.stream().map(p -> p.mark(t, file)).flatMap(Optional::stream).findFirst().orElse(null))).toList();
        List<CasePart.Fact> facts = parts.stream().flatMap(p -> p.facts(file).stream())
                .sorted(Comparator.comparingInt(CasePart.Fact::order)).toList();
        List<CasePart.Caution> cautions = parts.stream().flatMap(p -> p.cautions(file).stream())
                .sorted(Comparator.comparing(CasePart.Caution::stop).reversed()).toList();
        return new CaseHead(file, tab, LocalDate.now(clock), nav, facts, cautions);
    }

    /** Says when a case is next looked at. */
    static String nextReview(CaseFile file) {
        return file.nextReviewOn() == null ? (file.open() ? "To be set" : "Case closed") : Dates.shownWithDay(file.nextReviewOn());
    }
}
