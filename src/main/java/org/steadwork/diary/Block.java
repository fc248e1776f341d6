package org.steadwork.diary;

import java.time.ZoneId;
import java.util.Locale;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.Span;

/**
 * A stretch of a column of the diary.
 *
 * @param kind  booked, free, past, away or shut
 * @param title the patient's name, or what the time is
 * @param note  file number and kind of visit, or blank
 * @param where the room or the clinician, whichever the column is not, or blank
 * @param state how it stands, or blank
 * @param mark  the shape of the status sign
 * @param href  where it leads, or null
 * @param appointment the appointment's number and version, or null
 */
record Block(String kind, Span span, String title, String note, String where, String state, String mark, String href, Ref appointment, boolean sized) {

    /** An appointment as a form needs it; {@code arrives} when the patient can be noted as arrived from here. */
    record Ref(long id, int version, boolean arrives) {
    }

    private static final int HOUR = 60;

    static Block plain(String kind, Span span, String title) {
        return new Block(kind, span, title, "", "", "", "none", null, null, true);
    }

    static Block free(Span span, String href) {
        return new Block("free", span, "Free", "", "", "", "none", href, null, true);
    }

    /** @param byRoom true where the column is a room, so that the clinician is named */
    static Block booked(Appointment one, boolean byRoom, boolean today, ZoneId zone, boolean sized) {
        String where = byRoom ? one.clinician().displayName() : one.room() == null ? "" : one.room().name();
        return new Block("booked", one.span(), one.patient().name(), one.patient().fileNumber() + " \u00b7 " + one.kind().label().toLowerCase(Locale.ROOT),
                where, DiaryWords.state(one, zone), DiaryWords.mark(one), "/diary/appointments/" + one.id(),
                new Ref(one.id(), one.version(), today && one.toCome() && one.arrivedAt() == null), sized);
    }

    public String from() {
        return ClinicTime.shown(span.from());
    }

    public String to() {
        return ClinicTime.shown(span.to());
    }

    /** The classes that give it its height: hours and five-minute steps. */
    public String size() {
        return sized ? size(span) : "";
    }

    static String size(Span time) {
        return "h-" + time.minutes() / HOUR + " m-" + time.minutes() % HOUR;
    }

    public boolean booked() {
        return kind.equals("booked");
    }

    public boolean free() {
        return kind.equals("free");
    }

    /** A state to look at; what is merely expected is not said. */
    public boolean said() {
        return !state.isEmpty() && !state.equals("not here yet");
    }
}
