package org.steadwork.diary;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.VisitKind;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.Span;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** A booking as typed. A time pressed among those offered stands in for day, start and clinician. */
final class BookForm {

    static final String ANY_ROOM = "any";
    static final String NO_ROOM = "none";

    private BookForm() {
    }

    /** When and where, of a booking or a move; null parts have their error in the form. */
    record When(Long clinicianId, Wish.RoomWish room, LocalDate day, Integer start, Integer minutes) {

        boolean complete() {
            return clinicianId != null && room != null && day != null && start != null && minutes != null;
        }
    }

    /** Puts a pressed proposal into the fields, so that the page shows what was wanted whatever comes of it. */
    static void press(Form form) {
        Proposal.read(form.value("take")).ifPresent(taken -> form.with("day", Dates.shown(taken.day())).with("start", ClinicTime.shown(taken.start()))
                .with("clinician", taken.clinicianId()));
    }

    static When when(Form form, VisitKind kind, DiaryContent content) {
        press(form);
        Long clinician = id(form, "clinician", "Clinician");
        LocalDate day = form.requiredDate("day", "Day");
        return new When(clinician, room(form, kind, content), day, start(form), minutes(form, kind, content));
    }

    private static Wish.RoomWish room(Form form, VisitKind kind, DiaryContent content) {
        String room = form.value("room").strip();
        if (room.isEmpty() || room.equals(ANY_ROOM)) {
            return kind != null && content.length(kind).room() ? Wish.RoomWish.anyFree() : Wish.RoomWish.none();
        }
        if (room.equals(NO_ROOM)) {
            return Wish.RoomWish.none();
        }
        Long id = id(form, "room", "Room");
        return id == null ? null : new Wish.RoomWish(id, false);
    }

    private static Integer start(Form form) {
        OptionalInt start = ClinicTime.read(form.value("start"));
        if (start.isEmpty() || start.getAsInt() >= Span.DAY || start.getAsInt() % DiaryContent.GRID != 0) {
            String typed = form.value("start").strip();
            form.error("start", "Start must be a time in steps of " + DiaryContent.GRID + " minutes, for example 9:30."
                    + (typed.isEmpty() ? "" : " You entered “" + (typed.length() > 20 ? typed.substring(0, 20) + "…" : typed) + "”."));
            return null;
        }
        return start.getAsInt();
    }

    private static Integer minutes(Form form, VisitKind kind, DiaryContent content) {
        Integer minutes = form.integer("minutes", "Length", DiaryContent.GRID, DiaryContent.longest());
        if (minutes != null && minutes % DiaryContent.GRID != 0) {
            form.error("minutes", "Length must be a multiple of " + DiaryContent.GRID + " minutes. You entered " + minutes + ".");
            return null;
        }
        return minutes != null || form.error("minutes") != null || kind == null ? minutes : Integer.valueOf(content.length(kind).minutes());
    }

    static Long id(Form form, String field, String label) {
        Long id = Typed.number(form.value(field).strip());
        if (id == null) {
            form.error(field, form.has(field) ? label + ": choose one of those offered." : label + " is missing. Choose one.");
        }
        return id;
    }

    /** Reads which case a booking is for; null for the first visit of somebody who has none open. */
    static CaseFile caseFile(Form form, List<CaseFile> open) {
        if (open.isEmpty()) {
            return null;
        }
        if (open.size() == 1 && !form.has("caseId")) {
            return open.get(0);
        }
        CaseFile chosen = open.stream().filter(one -> one.id().toString().equals(form.value("caseId"))).findFirst().orElse(null);
        if (chosen == null) {
            form.error("caseId", "Choose the case that the visit belongs to.");
        }
        return chosen;
    }

    static String value(VisitKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }
}
