package org.steadwork.outcome;

import java.time.LocalDate;
import java.util.List;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Scored;
import org.steadwork.web.Form;

/** The entry of one instrument by its items; {@code scored} is what is stored for the day, or null. */
record ScoreEntry(Instrument instrument, LocalDate on, Form form, Scored scored, String value) {

    /** One item with its field. */
    record Row(int number, String topic, String field, String range) {
    }

    public List<Row> rows() {
        return instrument.items().stream().map(item -> new Row(item.number(), item.topic(), "i" + item.number(), item.min() + " to " + item.max()))
                .toList();
    }

    public String rule() {
        return ScoreGrids.capital(instrument.rule().words());
    }
}
