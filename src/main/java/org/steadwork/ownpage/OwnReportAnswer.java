package org.steadwork.ownpage;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.util.List;
import org.steadwork.outcome.scoring.AnswersText;
import org.steadwork.outcome.scoring.Instrument;

/** What the patient answered to one questionnaire, with the version that was asked. */
@Embeddable
public class OwnReportAnswer {

    private String instrument;

    @Column(name = "instrument_version")
    private String instrumentVersion;

    private String answers;

    protected OwnReportAnswer() {
    }

    /** @param answers in the order of the items, null for an unanswered one */
    public OwnReportAnswer(Instrument instrument, List<Integer> answers) {
        this.instrument = instrument.key();
        this.instrumentVersion = instrument.version();
        this.answers = AnswersText.write(answers);
    }

    public String instrument() {
        return instrument;
    }

    public String instrumentVersion() {
        return instrumentVersion;
    }

    /** The answers in item order, null for an unanswered one. */
    public List<Integer> answers() {
        return AnswersText.read(answers);
    }
}
