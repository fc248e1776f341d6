package org.steadwork.ownpage;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.OwnProgramme;
import org.steadwork.web.Form;

/**
 * One day of the patient's own page.
 *
 * @param form   ticks and pain, as stored or as typed
 * @param sent   keys of the sessions that are stored as done
 * @param alarm  true when pain after a session of the day, or of an earlier day that arrived on this one, rose by more than error
 * @param sentAt when something was last stored for the day, or null
 * @param now    time of the day in the clinic
 */
record OwnToday(CaseFile file, String clinician, LocalDate day, OwnProgramme programme, Form form, Set<String> sent, boolean alarm, Instant sentAt, LocalTime now) {

    private static final Pattern CLOCK = Pattern.compile("\\d\\d:\\d\\d");

    static OwnToday of(CaseFile file, LocalDate day, OwnProgramme programme, List<SessionTick> ticks, boolean lateAlarm, LocalTime now) {
        Form form = Form.empty().with("day", day.toString());
        Set<String> sent = new TreeSet<>();
        for (SessionTick tick : ticks) {
            if (!tick.takenBack()) {
                sent.add(key(tick));
                form.with("before_" + key(tick), tick.painBefore()).with("after_" + key(tick), tick.painAfter());
            }
        }
        form.withAll("done", List.copyOf(sent));
        return new OwnToday(file, file.clinician().displayName(), day, programme, form, sent, lateAlarm || ticks.stream().anyMatch(SessionTick::alarm),
                ticks.stream().map(SessionTick::receivedAt).max(Instant::compareTo).orElse(null), now);
    }

    /** The same day with what was typed in place of what is stored. */
    OwnToday with(Form typed) {
        return new OwnToday(file, clinician, day, programme, typed, sent, alarm, sentAt, now);
    }

    static String key(SessionTick tick) {
        return tick.prescription().id() + "-" + tick.slot();
    }

    /** True when a number of one of its sessions was refused. */
    public boolean wrong(OwnProgramme.Item item) {
        return item.slots().stream().anyMatch(slot -> form.error(item.before(slot)) != null || form.error(item.after(slot)) != null);
    }

    /** Sessions ticked that belong to today's programme. */
    public int done() {
        int done = 0;
        for (OwnProgramme.Item item : programme.items()) {
            for (OwnProgramme.Slot slot : item.slots()) {
                done += sent.contains(item.key(slot)) ? 1 : 0;
            }
        }
        return done;
    }

    /** The next moment of the day plan with something not ticked yet; null when there is none. */
    public String next() {
        String from = "%02d:%02d".formatted(now.getHour(), now.getMinute());
        return programme.items().stream().flatMap(item -> item.slots().stream().filter(slot -> !sent.contains(item.key(slot))).map(OwnProgramme.Slot::when))
                .filter(when -> CLOCK.matcher(when).matches() && when.compareTo(from) >= 0).min(String::compareTo).orElse(null);
    }

    public List<Integer> pains() {
        return List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
    }
}
