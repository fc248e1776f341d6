package org.steadwork.diary;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.diary.rules.MissedVisit;
import org.steadwork.web.Option;

/** What follows a missed visit, in the words of the content: each step for the front desk and, where it is clinical, for the clinician. */
@Startup
@ApplicationScoped
class MissedContent {

    /** The words of a step; those of the clinician may hold a reason that the front desk does not see. */
    record Words(String label, String desk, String clinician) {
    }

    private final MissedVisit.Rule rule;
    private final Map<MissedVisit.Step, Words> steps;
    private final List<Option> routes;
    private final List<Option> outcomes;
    private final List<Option> reasons;

    MissedContent() {
        this(Content.yaml("diary/did-not-attend.yaml"));
    }

    MissedContent(Entry entry) {
        entry.text("source");
        rule = new MissedVisit.Rule(entry.integer("routes_same_day"), entry.integer("in_a_row"), entry.integer("in_episode"), entry.integer("days_to_reply"));
        steps = steps(entry);
        routes = options(entry, "routes");
        outcomes = options(entry, "outcomes");
        reasons = options(entry, "reasons");
        for (String needed : List.of("phone", "letter", "contact_person", "doctor")) {
            if (routes.stream().noneMatch(route -> route.value().equals(needed))) {
                throw entry.problem("'routes' must hold " + needed);
            }
        }
        if (outcomes.stream().noneMatch(outcome -> outcome.value().equals(ContactAttempt.REACHED))) {
            throw entry.problem("'outcomes' must hold " + ContactAttempt.REACHED);
        }
    }

    private static Map<MissedVisit.Step, Words> steps(Entry entry) {
        Map<MissedVisit.Step, Words> steps = new EnumMap<>(MissedVisit.Step.class);
        for (Entry step : entry.entries("steps")) {
            step.text("source");
            steps.put(step.constant("key", MissedVisit.Step.class), new Words(step.text("label"), step.text("desk"), step.optionalText("clinician").orElse(step.text("desk"))));
        }
        for (MissedVisit.Step step : MissedVisit.Step.values()) {
            if (step != MissedVisit.Step.DONE && !steps.containsKey(step)) {
                throw entry.problem("'steps' says nothing of " + step.name().toLowerCase(Locale.ROOT));
            }
        }
        return steps;
    }

    private static List<Option> options(Entry entry, String list) {
        return entry.entries(list).stream().map(one -> new Option(one.text("key"), one.text("label"))).toList();
    }

    MissedVisit.Rule rule() {
        return rule;
    }

    Words words(MissedVisit.Step step) {
        return steps.get(step);
    }

    List<Option> routes() {
        return routes;
    }

    List<Option> outcomes() {
        return outcomes;
    }

    List<Option> reasons() {
        return reasons;
    }

    static String label(List<Option> options, String key) {
        return options.stream().filter(one -> one.value().equals(key)).map(Option::label).findFirst().orElse(key);
    }
}
