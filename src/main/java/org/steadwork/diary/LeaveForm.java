package org.steadwork.diary;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.steadwork.account.Account;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.Span;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** Leave as typed; without times it is whole days. */
record LeaveForm(Account account, LocalDate first, LocalDate last, Span part, String words) {

    static final String CLINIC = "clinic";
    private static final int LONGEST_DAYS = 730;

    static LeaveForm read(Form form, List<Account> clinicians) {
        Account account = clinicians.stream().filter(one -> form.is("who", one.id().toString())).findFirst().orElse(null);
        if (account == null && !form.is("who", CLINIC)) {
            form.error("who", "Say who is away.");
        }
        LocalDate first = form.requiredDate("firstOn", "First day");
        LocalDate last = form.date("lastOn", "Last day");
        last = last == null && form.error("lastOn") == null ? first : last;
        if (first != null && last != null && (last.isBefore(first) || last.isAfter(first.plusDays(LONGEST_DAYS)))) {
            form.error("lastOn", "The last day lies between the first, " + Dates.shown(first) + ", and two years later. You entered " + Dates.shown(last) + ".");
        }
        Span part = part(form);
        return new LeaveForm(account, first, last, part, form.requiredText("words", "What it is", Leave.LONGEST_WORDS));
    }

    private static Span part(Form form) {
        if (!form.has("from") && !form.has("to")) {
            return null;
        }
        OptionalInt from = ClinicTime.read(form.value("from"));
        OptionalInt to = ClinicTime.read(form.value("to"));
        if (from.isEmpty() || to.isEmpty() || from.getAsInt() >= to.getAsInt()) {
            form.error("from", "A part of the day needs both times, the first before the second, for example 13:00 and 17:00.");
            return null;
        }
        return new Span(from.getAsInt(), to.getAsInt());
    }

    static Form show(Leave leave) {
        boolean whole = leave.span().equals(Span.wholeDay());
        return Form.empty().with("version", leave.version()).with("who", leave.clinic() ? CLINIC : leave.account().id()).with("firstOn", Dates.shown(leave.firstOn()))
                .with("lastOn", Dates.shown(leave.lastOn())).with("from", whole ? null : ClinicTime.shown(leave.span().from()))
                .with("to", whole ? null : ClinicTime.shown(leave.span().to())).with("words", leave.words());
    }
}
