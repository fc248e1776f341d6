package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.SheetHint;
import org.steadwork.web.Dates;

/** Says on the exercise sheet how the own page is reached, while a link opens. The link itself is stored nowhere and cannot be printed again. */
@ApplicationScoped
class OwnPageHint implements SheetHint {

    @Inject
    OwnLinks links;

    @Inject
    Clock clock;

    @Override
    public Optional<String> of(CaseFile file) {
        LocalDate today = LocalDate.now(clock);
        return links.ofCase(file.id()).stream().filter(link -> link.alive(today)).findFirst()
                .map(link -> "Scan the code on the card you were given, or open its address; your date of birth opens your page. It opens until " + Dates.inLetter(link.expiresOn()) + ".");
    }
}
