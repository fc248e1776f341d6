package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.VisitNotes;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatusCode;
import org.steadwork.casefile.WorkStatusDecider;
import org.steadwork.casefile.WorkStatuses;
import org.steadwork.content.Entry;

/** The work status and the note of each visit, signed or left as a draft. */
@ApplicationScoped
class DemoNotes implements DemoVisitPart {

    private static final String UNSIGNED = "no";

    @Inject
    VisitNotes notes;

    @Inject
    WorkStatuses statuses;

    @Override
    public int order() {
        return 60;
    }

    @Override
    public void load(DemoVisit visit) {
        visit.entry().entry("work_status").ifPresent(status -> status(visit, status));
        visit.entry().entry("note").ifPresent(written -> note(visit, written));
    }

    private void status(DemoVisit visit, Entry written) {
        LocalDate from = LocalDate.parse(written.text("from"));
        WorkStatus status = statuses.beginning(visit.file().id(), from).orElseGet(() -> new WorkStatus(visit.file(), from));
        status.describe(written.constant("status", WorkStatusCode.class), written.optionalText("to").map(LocalDate::parse).orElse(null),
                written.constant("decided_by", WorkStatusDecider.class), written.optionalText("hours_per_week").map(BigDecimal::new).orElse(null),
                written.optionalText("note").orElse(null), visit.clinician().displayName(), visit.moment());
        statuses.persist(status);
    }

    private void note(DemoVisit visit, Entry written) {
        VisitNote note = new VisitNote(visit.visit());
        note.draft(written.optionalText("subjective").orElse(null), written.optionalText("objective").orElse(null),
                written.optionalText("assessment").orElse(null), written.optionalText("plan").orElse(null), visit.clinician().displayName(),
                visit.moment());
        if (!visit.entry().text("signed").equals(UNSIGNED)) {
            note.sign(visit.clinician(), visit.moment());
        }
        notes.persist(note);
    }
}
