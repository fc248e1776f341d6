package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseScope;
import org.steadwork.casefile.NextStep;
import org.steadwork.casefile.NextSteps;

/** Reads what is most pressing in a case from the stored list where that is up to date for the case, and asks every rule where it is not. */
@ApplicationScoped
class StoredNextSteps implements NextSteps {

    @Inject
    Refresh refresh;

    @Inject
    Worklists worklists;

    @Inject
    Asking asking;

    @Override
    public Optional<NextStep> of(long caseId, LocalDate today) {
        if (refresh.knows(caseId, today)) {
            return worklists.first(caseId).map(entry -> new NextStep(entry.label(), entry.reason(), entry.action(), entry.href()));
        }
        Asking.Told told = asking.entries(today, CaseScope.one(caseId));
        if (!told.whole()) {
            // what could not be asked may be the most pressing
            return Optional.of(new NextStep("Not known", "Part of what Today asks of this case could not be read. Something urgent may be missing here: look through the case.",
                    "What Today says of this case", "/?case=" + caseId));
        }
        return told.entries().stream()
                .min(Comparator.comparing(Attention.Entry::urgency).thenComparing(Attention.Entry::since))
                .map(entry -> new NextStep(entry.label(), entry.reason(), entry.action(), entry.href()));
    }
}
