package org.steadwork.meeting;

import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import org.steadwork.web.Form;

/** The page of an agenda, shown by whoever changes it. */
@ApplicationScoped
class AgendaSheet {

    @Inject
    Agendas agendas;

    @Inject
    Clock clock;

    /** @param typed what was typed, or null to show what is stored */
    TemplateInstance page(ReviewMeeting meeting, Form typed) {
        return page(agendas.of(meeting), typed);
    }

    TemplateInstance page(Agenda agenda, Form typed) {
        Form form = show(agenda);
        if (typed != null) {
            show(agenda).fields().stream().filter(field -> !typed.fields().contains(field)).forEach(field -> typed.with(field, form.value(field)));
        }
        return MeetingPages.Templates.agenda(agenda, typed == null ? form : typed, LocalDate.now(clock));
    }

    /** Puts order and minutes into a form. */
    static Form show(Agenda agenda) {
        Form form = Form.empty().with("version", agenda.version());
        agenda.rows().forEach(row -> form.with("place" + row.file().id(), row.place()).with("minutes" + row.file().id(), row.minutes()));
        return form;
    }

    Form refused(Form form, String field, String why) {
        form.error(field, why);
        return form;
    }
}
