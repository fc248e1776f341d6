package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.OwnProgramme;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.Prescriptions;
import org.steadwork.web.Form;

/**
 * Takes sessions told of an exercise that the patient's page does not show any more: ticked on a phone without reception, and sent
 * when the exercise was suspended or ended. They were done, so they are kept; what was not to be done on its day is marked.
 */
@ApplicationScoped
class LateTicks {

    private static final Pattern KEY = Pattern.compile("(\\d{1,18})-(\\d{1,2})");
    private static final int MOST_SLOTS = 99;

    @Inject
    Prescriptions prescriptions;

    @Inject
    SessionTicks ticks;

    @Inject
    PainRise pain;

    @Inject
    Clock clock;

    /** A session told besides the programme. */
    private record Told(Prescription given, int slot, String key) {
    }

    /** Notes on the form pain that is out of range. */
    void check(OwnProgramme programme, Form form) {
        keys(programme, form).forEach(key -> {
            form.integer("before_" + key, "Pain before", 0, 10);
            form.integer("after_" + key, "Pain after", 0, 10);
        });
    }

    void take(CaseFile file, OwnProgramme programme, LocalDate day, Form form, Map<String, SessionTick> known) {
        List<String> done = form.values("done");
        for (String key : keys(programme, form)) {
            SessionTick tick = known.get(key);
            if (!done.contains(key)) {
                if (tick != null) {
                    tick.takeBack();
                }
                continue;
            }
            told(file, key, day).ifPresent(session -> store(session, tick, meanwhile(session.given(), programme, day), day, form));
        }
    }

    private void store(Told session, SessionTick known, Meanwhile meanwhile, LocalDate day, Form form) {
        SessionTick tick = known;
        if (tick == null) {
            tick = new SessionTick(session.given(), day, session.slot(), Instant.now(clock));
            ticks.persist(tick);
        }
        Integer before = form.integer("before_" + session.key(), "Pain before", 0, 10);
        Integer after = form.integer("after_" + session.key(), "Pain after", 0, 10);
        tick.done(before, after, pain.beyondError(before, after), Instant.now(clock));
        tick.markAs(meanwhile);
    }

    /**
     * Up to its last day an exercise was done as planned; so was a session that a new dose no longer holds. Since when a red flag has held
     * an exercise back is not known, so that it counts for the whole day.
     */
    private static Meanwhile meanwhile(Prescription given, OwnProgramme programme, LocalDate day) {
        if (!given.current()) {
            return day.isAfter(given.endedOn()) ? Meanwhile.ENDED : null;
        }
        return programme.items().stream().anyMatch(item -> item.id() == given.id()) ? null : Meanwhile.SUSPENDED;
    }

    private Optional<Told> told(CaseFile file, String key, LocalDate day) {
        Matcher parts = KEY.matcher(key);
        if (!parts.matches()) {
            return Optional.empty();
        }
        int slot = Integer.parseInt(parts.group(2));
        return slot < 1 || slot > MOST_SLOTS ? Optional.empty()
                : prescriptions.inCase(file.id(), Long.parseLong(parts.group(1))).filter(given -> !given.startedOn().isAfter(day))
                .map(given -> new Told(given, slot, key));
    }

    /** What the form ticks, or ticked before, and the programme of now does not hold. */
    private static Set<String> keys(OwnProgramme programme, Form form) {
        Set<String> shown = programme.items().stream().flatMap(item -> item.slots().stream().map(item::key)).collect(Collectors.toSet());
        Set<String> keys = new LinkedHashSet<>(form.values("done"));
        keys.addAll(form.values("was"));
        keys.removeIf(key -> shown.contains(key) || !KEY.matcher(key).matches());
        return keys;
    }
}
