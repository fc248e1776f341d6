package org.steadwork.diary;

import java.util.ArrayList;
import java.util.List;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.VisitKind;
import org.steadwork.people.Patient;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** The form of the waiting list: for whom, and what is offered. {@code entry} is null for a new one. */
record WaitingView(WaitingEntry entry, Patient patient, List<CaseFile> cases, Form form, List<Account> clinicians, List<Option> parts) {

    /** One who waits, with the next times that fit. */
    record Row(WaitingEntry entry, String times, List<Proposal> proposals) {
    }

    public String action() {
        return entry == null ? "/diary/waiting/new" : "/diary/waiting/" + entry.id();
    }

    public List<Option> kinds() {
        return Option.of(VisitKind.class, VisitKind::label);
    }

    public List<Option> priorities() {
        return Option.of(WaitingEntry.Priority.class, WaitingEntry.Priority::label);
    }

    public List<Option> who() {
        List<Option> who = new ArrayList<>(List.of(new Option(WaitingForm.ANYBODY, "Any clinician")));
        clinicians.forEach(one -> who.add(new Option(one.id().toString(), one.displayName())));
        return who;
    }

    public boolean several() {
        return entry == null && cases.size() > 1;
    }

    public List<Option> caseOptions() {
        return cases.stream().map(one -> new Option(one.id().toString(), "opened " + Dates.shown(one.openedOn()) + ", " + one.clinician().displayName())).toList();
    }
}
