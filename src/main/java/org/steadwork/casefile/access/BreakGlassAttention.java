package org.steadwork.casefile.access;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.Attention;

/** Tells the lead of cases that were opened from outside their care team, until a lead has looked at each. */
@ApplicationScoped
class BreakGlassAttention implements Attention {

    @Inject
    CareTeams teams;

    @Inject
    CurrentAccount current;

    @Override
    public List<Entry> entries(LocalDate today) {
        return current.lead() ? teams.notLookedAt().stream().map(BreakGlassAttention::entry).toList() : List.of();
    }

    private static Entry entry(BreakGlass opened) {
        return new Entry(opened.caseFile().id(), opened.caseFile().patient().name(), Urgency.TODAY, "Break-glass",
                LocalDate.ofInstant(opened.openedAt(), ZoneId.systemDefault()),
                opened.account().displayName() + " opened this case from outside its care team: “" + opened.reason() + "”", "Look at it",
                "/clinic/break-glass").marked("near");
    }
}
