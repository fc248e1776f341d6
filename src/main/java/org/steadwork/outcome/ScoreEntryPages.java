package org.steadwork.outcome;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.InvalidAnswer;
import org.steadwork.outcome.scoring.Item;
import org.steadwork.outcome.scoring.ItemAnswers;
import org.steadwork.outcome.scoring.Scored;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Keying in one instrument from its filled-in form, by item number. */
@Path("/cases/{id: \\d+}/outcomes/{instrument: [a-z0-9_]+}")
@RolesAllowed("clinician")
class ScoreEntryPages {

    private static final int NOT_STORED = 0;

    @Inject
    CaseHeads heads;

    @Inject
    Instruments instruments;

    @Inject
    Scores scores;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response entry(@RestPath long id, @RestPath String instrument, @RestQuery String on) {
        Instrument chosen = find(instrument);
        CaseHead head = heads.open(id, CaseTab.OUTCOMES);
        LocalDate day = ScoreDay.of(on, head.file(), LocalDate.now(clock));
        Optional<Score> stored = scores.on(id, instrument, day);
        return Answers.page(OutcomePages.Templates.scoreEntry(head, entry(chosen, day, show(chosen, day, stored), stored, earlier(id, chosen, day))));
    }

    @POST
    @Transactional
    public Response save(@RestPath long id, @RestPath String instrument) {
        Instrument chosen = find(instrument);
        CaseFile file = heads.find(id);
        Form form = posted.read();
        LocalDate on = ScoreDay.read(form, file, LocalDate.now(clock));
        List<Integer> answers = new ArrayList<>();
        for (Item item : chosen.items()) {
            answers.add(read(form, item));
        }
        if (!form.hasErrors() && answers.stream().allMatch(answer -> answer == null) && scores.on(id, instrument, on).isEmpty()) {
            form.error("i1", "No item is answered, so there is nothing to store.");
        }
        Optional<Score> stored = on == null ? Optional.empty() : scores.on(id, instrument, on);
        LocalDate shown = on == null ? LocalDate.now(clock) : on;
        if (form.hasErrors()) {
            return Answers.unprocessable(OutcomePages.Templates.scoreEntry(heads.head(file, CaseTab.OUTCOMES), entry(chosen, shown, form, stored, earlier(id, chosen, shown))));
        }
        if (form.version() != version(stored)) {
            form.conflictsWith(show(chosen, on, stored), version(stored));
            return Answers.conflict(OutcomePages.Templates.scoreEntry(heads.head(file, CaseTab.OUTCOMES), entry(chosen, on, form, stored, earlier(id, chosen, on))));
        }
        scores.record(file, chosen, on, answers);
        audit.record("entered a questionnaire", file.patient().id(), id, null);
        return Answers.seeOther(CaseTab.OUTCOMES.href(id) + "?on=" + on);
    }

    private static Integer read(Form form, Item item) {
        String field = "i" + item.number();
        try {
            return ItemAnswers.read(item, form.value(field));
        } catch (InvalidAnswer refused) {
            form.error(field, refused.getMessage());
            return null;
        }
    }

    private static ScoreEntry entry(Instrument instrument, LocalDate on, Form form, Optional<Score> stored, Score earlier) {
        Scored scored = stored.map(score -> instrument.score(score.answers())).orElse(null);
        String value = scored == null ? "" : scored.value().isPresent() ? Shown.value(instrument, scored.value().getAsDouble())
                : scored.low().isPresent() ? Shown.amount(scored.low().getAsDouble()) + " to " + Shown.amount(scored.high().getAsDouble()) : "";
        return new ScoreEntry(instrument, on, form, scored, value, earlier);
    }

    // answers to another version of the form are not shown beside these
    private Score earlier(long id, Instrument instrument, LocalDate day) {
        return scores.before(id, instrument.key(), day).filter(score -> score.instrumentVersion().equals(instrument.version())).orElse(null);
    }

    private static Form show(Instrument instrument, LocalDate on, Optional<Score> stored) {
        Form form = Form.empty().with("version", version(stored)).with("on", Dates.shown(on));
        for (Item item : instrument.items()) {
            form.with("i" + item.number(), stored.map(score -> score.answers().get(item.number() - 1)).orElse(null));
        }
        return form;
    }

    // a score that is not stored has version 0, one that is stored counts from 1
    private static int version(Optional<Score> stored) {
        return stored.map(score -> score.version() + 1).orElse(NOT_STORED);
    }

    private Instrument find(String key) {
        return instruments.find(key).filter(instrument -> !key.equals(Measures.OWN_ACTIVITIES))
                .orElseThrow(NotFoundException::new);
    }
}
