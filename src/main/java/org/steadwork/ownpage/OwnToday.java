package org.steadwork.ownpage;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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
 */
record OwnToday(CaseFile file, String clinician, LocalDate day, OwnProgramme programme, Form form, Set<String> sent, boolean alarm, Instant sentAt) {

    static OwnToday of(CaseFile file, LocalDate day, OwnProgramme programme, List<SessionTick> ticks, boolean lateAlarm) {
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
                ticks.stream().map(SessionTick::receivedAt).max(Instant::compareTo).orElse(null));
    }

    /** The same day with what was typed in place of what is stored. */
    OwnToday with(Form typed) {
        return new OwnToday(file, clinician, day, programme, typed, sent, alarm, sentAt);
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

    public List<Integer> pains() {
        return List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
    }
}
