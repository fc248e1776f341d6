package org.steadwork.letter;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.web.Answers;
import org.steadwork.workplace.Finding;
import org.steadwork.workplace.Findings;
import org.steadwork.workplace.WorkplaceContent;
import org.steadwork.workplace.fit.Criterion;

/** Puts a finding at the work place into the report to the employer: the draft that is open, or a new one. */
@Path("/cases/{id: \\d+}/letters/finding/{finding: \\d+}")
@RolesAllowed("clinician")
class FindingLetterPages {

    private static final String KIND = "employer_report";

    @Inject
    CaseHeads heads;

    @Inject
    Findings findings;

    @Inject
    WorkplaceContent criteria;

    @Inject
    LetterContent content;

    @Inject
    Letters letters;

    @Inject
    LetterDesk desks;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    @POST
    @Transactional
    public Response put(@RestPath long id, @RestPath("finding") long findingId) {
        CaseFile file = heads.find(id);
        Finding finding = findings.find(id, findingId).orElseThrow(NotFoundException::new);
        Criterion criterion = criteria.criterion(finding.criterionId()).orElseThrow(NotFoundException::new);
        if (file.patient().employer() == null) {
            return Answers.seeOther("/cases/" + id + "/letters/new/" + KIND);
        }
        LetterReader reader = LetterReader.of(file.patient().employer());
        Letter letter = letters.openDraft(id, KIND, reader).flatMap(number -> letters.numberedForChange(id, number))
                .orElseGet(() -> desks.begin(file, content.kind(KIND), reader, account.get()));
        Map<String, String> texts = new LinkedHashMap<>(letter.texts());
        add(texts, "modifications", criterion.label() + ": " + criterion.adjustment() + "\t\t\t");
        add(texts, "workplace", WorkplaceFacts.row(finding, criterion));
        if (!texts.equals(letter.texts())) {
            letter.write(texts, account.get(), Instant.now(clock));
            letters.flush();
        }
        audit.record("put finding into letter draft", file.patient().id(), id, letter.reference());
        return Answers.seeOther(LetterView.path(letter));
    }

    /** Adds a row unless one that begins with the same cell is there. */
    private static void add(Map<String, String> texts, String section, String row) {
        String rows = texts.getOrDefault(section, "");
        String first = row.substring(0, row.indexOf('\t') + 1);
        if (rows.lines().noneMatch(line -> line.startsWith(first))) {
            texts.put(section, rows.isBlank() ? row : rows + "\n" + row);
        }
    }
}
