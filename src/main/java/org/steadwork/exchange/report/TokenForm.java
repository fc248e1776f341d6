package org.steadwork.exchange.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** A new token as typed. */
record TokenForm(String name, List<Scope> scopes, LocalDate expiresOn) {

    private static final int LONGEST_DAYS = 366;
    private static final int USUAL_DAYS = 90;

    static Form empty(LocalDate today) {
        return Form.empty().with("expiresOn", Dates.shown(today.plusDays(USUAL_DAYS)));
    }

    static TokenForm read(Form form, LocalDate today) {
        String name = form.requiredText("name", "Name", 80);
        List<Scope> scopes = form.values("scopes").stream().map(Scope::of).flatMap(Optional::stream).distinct().toList();
        if (scopes.isEmpty()) {
            form.error("scopes", "Choose at least one thing that the program may read.");
        }
        LocalDate expiresOn = form.requiredDate("expiresOn", "Last day");
        if (expiresOn != null && (expiresOn.isBefore(today) || expiresOn.isAfter(today.plusDays(LONGEST_DAYS)))) {
            form.error("expiresOn", "The last day lies between today and " + Dates.shown(today.plusDays(LONGEST_DAYS)) + ". You entered " + Dates.shown(expiresOn) + ".");
        }
        return new TokenForm(name, scopes, expiresOn);
    }
}
