package org.steadwork.diary;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.steadwork.account.Account;
import org.steadwork.casefile.VisitKind;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** An entry of the waiting list as typed. */
record WaitingForm(VisitKind kind, Account clinician, LocalDate earliest, LocalDate latest, List<String> times, WaitingEntry.Priority priority) {

    static final String ANYBODY = "any";

    static WaitingForm read(Form form, List<Account> clinicians, DiaryContent content, LocalDate today) {
        VisitKind kind = form.requiredChoice("kind", "Kind of visit", VisitKind.class);
        Account clinician = null;
        if (form.has("clinician") && !form.is("clinician", ANYBODY)) {
            clinician = clinicians.stream().filter(one -> form.is("clinician", one.id().toString())).findFirst().orElse(null);
            if (clinician == null) {
                form.error("clinician", "Choose one of the clinicians offered, or any.");
            }
        }
        LocalDate earliest = form.date("earliestOn", "Earliest day");
        LocalDate latest = form.date("latestUntil", "Latest day");
        earliest = earliest == null && form.error("earliestOn") == null ? today : earliest;
        if (earliest != null && latest != null && latest.isBefore(earliest)) {
            form.error("latestUntil", "The latest day cannot lie before the earliest, " + Dates.shown(earliest) + ". You entered " + Dates.shown(latest) + ".");
        }
        List<String> times = form.values("times").stream().filter(key -> content.partOfDay(key).isPresent()).distinct().toList();
        if (times.size() < form.values("times").stream().filter(key -> !key.isBlank()).distinct().count()) {
            form.error("times", "Choose among the times of day offered.");
        }
        WaitingEntry.Priority priority = form.requiredChoice("priority", "Priority", WaitingEntry.Priority.class);
        return new WaitingForm(kind, clinician, earliest, latest, times, priority);
    }

    void fill(WaitingEntry entry) {
        entry.want(kind, clinician, earliest, latest, times, priority);
    }

    static Form show(WaitingEntry entry) {
        return Form.empty().with("version", entry.version()).with("kind", BookForm.value(entry.kind()))
                .with("clinician", entry.clinician() == null ? ANYBODY : entry.clinician().id()).with("earliestOn", Dates.shown(entry.earliestOn()))
                .with("latestUntil", entry.latestOn() == null ? null : Dates.shown(entry.latestOn())).withAll("times", entry.times())
                .with("priority", entry.priority().name().toLowerCase(Locale.ROOT));
    }
}
