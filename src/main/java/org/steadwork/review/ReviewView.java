package org.steadwork.review;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.WorkStatusCode;
import org.steadwork.casefile.WorkStatusDecider;
import org.steadwork.outcome.MeasureView;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/**
 * What the review form shows.
 *
 * @param later the latest visit after this one, at which the next review is set; null when this is the latest
 * @param asked what is due, or entered already
 * @param activities named so far
 * @param reported pain in words from the symptom report of the day, blank when there is none
 * @param around what the other features say
 * @param note the stored draft, or null
 * @param noteForm the fields of the note: as typed, as stored, or as drafted
 * @param bars what has to be done before the note can be signed
 */
record ReviewView(Visit visit, Visit later, Form form, Asked.Questions asked, List<ActivityRow> activities, List<MeasureView> measures,
        String reported, Surroundings.Lines around, VisitNote note, Form noteForm, boolean drafted, List<String> bars) {

    /** One own activity with what it was. */
    record ActivityRow(String field, String words, String before) {
    }

    public String action() {
        return "/cases/" + visit.caseFile().id() + "/visits/" + visit.number();
    }

    public List<Integer> ratings() {
        return List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
    }

    public List<Option> attendances() {
        return Option.of(Attendance.class, Attendance::label);
    }

    public List<Option> kinds() {
        return Option.of(VisitKind.class, VisitKind::label);
    }

    public List<Option> workStatuses() {
        return Option.of(WorkStatusCode.class, code -> code.label() + ": " + code.meaning());
    }

    public List<Option> deciders() {
        return Arrays.stream(WorkStatusDecider.values()).map(by -> new Option(by.name().toLowerCase(Locale.ROOT), by.label())).toList();
    }
}
