package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.outcome.scoring.Instrument;

/** The instruments that the content lets a patient answer on a phone, and which of them are due. */
@ApplicationScoped
public class PhoneForms {

    @Inject
    Instruments instruments;

    @Inject
    DueMeasures due;

    /** All instruments that may be asked on a phone, in the order in which they are offered. */
    public List<Instrument> all() {
        return instruments.all().stream().filter(instrument -> instrument.onPhone().isPresent()).toList();
    }

    /** Those of them that are due in a case by their schedule on a day. */
    public List<Instrument> due(long caseId, LocalDate on) {
        List<String> keys = due.of(caseId, on).stream().map(DueMeasures.Due::key).toList();
        return all().stream().filter(instrument -> keys.contains(instrument.key())).toList();
    }
}
