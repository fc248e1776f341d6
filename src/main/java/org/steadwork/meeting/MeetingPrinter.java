package org.steadwork.meeting;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.RawString;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.steadwork.letter.Letterhead;
import org.steadwork.letter.pdf.LetterPdf;
import org.steadwork.letter.pdf.PdfPress;
import org.steadwork.web.Dates;

/** Prints the minutes, and the pack with one page a case, as PDF/A on the clinic's paper. */
@ApplicationScoped
class MeetingPrinter {

    @CheckedTemplate(basePath = "meeting", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance printMinutes(MinutesText minutes, List<String> clinic, String foot);

        static native TemplateInstance printPack(Pack pack, List<String> clinic, String foot);
    }

    /** The pack: what stands on its first page, and a page for every case. */
    record Pack(ReviewMeeting meeting, Agenda agenda, String title, boolean forGuests, List<CaseSheet.View> cases) {

        public RawString chart(CaseBrief.Score score) {
            return new RawString(score.chart().paper());
        }
    }

    @Inject
    Letterhead letterhead;

    @Inject
    Agendas agendas;

    @Inject
    CaseSheet sheet;

    @Inject
    Clock clock;

    LetterPdf minutes(MinutesText minutes, Instant made) {
        return print(Templates.printMinutes(minutes, letterhead.lines(), letterhead.foot()), minutes.title() + ": minutes", made);
    }

    /** @param forGuests true for what everybody in the room may have; false for the clinicians of the clinic alone */
    LetterPdf pack(ReviewMeeting meeting, boolean forGuests) {
        Agenda agenda = agendas.of(meeting);
        List<CaseSheet.View> cases = new ArrayList<>();
        for (Agenda.Row row : agenda.rows()) {
            cases.add(sheet.view(agenda, forGuests ? row : forTeam(row), ""));
        }
        String title = "Review meeting, " + Dates.inLetter(meeting.heldOn());
        return print(Templates.printPack(new Pack(meeting, agenda, title, forGuests, cases), letterhead.lines(), letterhead.foot()), title, Instant.now(clock));
    }

    private Agenda.Row forTeam(Agenda.Row row) {
        return new Agenda.Row(row.file(), row.name(), row.item(), row.place(), row.minutes(), row.reasons(), row.unknown(), row.carried(), row.again(),
                Room.CLINICIANS);
    }

    private LetterPdf print(TemplateInstance page, String title, Instant made) {
        return PdfPress.print(page.render(), title, letterhead.lines().get(0), made, letterhead.paper());
    }
}
