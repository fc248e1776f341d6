package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.kernel.Answer;
import org.steadwork.redflag.Flag;
import org.steadwork.redflag.FlagAction;
import org.steadwork.redflag.FlagActions;
import org.steadwork.redflag.Flags;
import org.steadwork.redflag.GivenAnswer;
import org.steadwork.redflag.RedFlagScreen;
import org.steadwork.redflag.ScreenKeeping;
import org.steadwork.redflag.rules.Occasion;
import org.steadwork.redflag.rules.ScreenResult;
import org.steadwork.redflag.rules.Urgency;

/** The red-flag screen of each visit, and what was done about the flags: calls, levels, closing. */
@ApplicationScoped
class DemoRedFlags implements DemoVisitPart {

    private static final Map<String, Occasion> SETS = Map.of("full", Occasion.FULL, "short", Occasion.REVIEW, "single", Occasion.REVIEW);

    @Inject
    ScreenKeeping keeping;

    @Inject
    SymptomReports reports;

    @Inject
    Flags flags;

    @Inject
    FlagActions calls;

    @Override
    public int order() {
        return 20;
    }

    @Override
    public void load(DemoVisit visit) {
        visit.entry().entry("red_flags").ifPresent(asked -> screen(visit, asked));
        visit.entry().entries("flag_actions").forEach(action -> act(visit, action));
    }

    private void screen(DemoVisit visit, Entry asked) {
        Set<String> regions = reports.regionsReported(visit.file().id()).stream().map(BodyRegion::key).collect(Collectors.toSet());
        RedFlagScreen screen = keeping.begin(visit.file(), SETS.get(asked.text("set")), visit.clinician(), visit.moment());
        Map<String, GivenAnswer> given = new LinkedHashMap<>();
        if (asked.has("others")) {
            Answer others = asked.constant("others", Answer.class);
            Set<String> named = asked.entry("answers").map(Entry::keys).orElse(Set.of());
            dueKeys(screen.occasion(), regions).stream().filter(key -> !named.contains(key))
                    .forEach(key -> given.put(key, new GivenAnswer(others, null, false)));
        }
        named(asked, given);
        ScreenResult result = keeping.save(screen, regions, given, visit.moment());
        if (asked.has("others")) {
            answerWhatRulesAskFor(asked, screen, regions, result, visit.moment());
        }
        screen.sign(visit.clinician(), visit.moment());
    }

    /** Takes the answers that the file names, with its words; "declined" among the words marks a declined question. */
    private static void named(Entry asked, Map<String, GivenAnswer> given) {
        Entry answers = asked.entry("answers").orElse(null);
        if (answers == null) {
            return;
        }
        Entry words = asked.entry("words").orElse(null);
        for (String key : answers.keys()) {
            String note = words != null && words.has(key) ? words.text(key) : null;
            given.put(key, new GivenAnswer(answers.constant(key, Answer.class), note, note != null && note.startsWith("Declined")));
        }
    }

    private void answerWhatRulesAskFor(Entry asked, RedFlagScreen screen, Set<String> regions, ScreenResult result, Instant moment) {
        Set<String> named = asked.entry("answers").map(Entry::keys).orElse(Set.of());
        Map<String, GivenAnswer> more = new HashMap<>();
        result.open().stream().filter(open -> open.answer() == Answer.NOT_ASKED && !named.contains(open.key()) && !open.key().contains(":"))
                .forEach(open -> more.put(open.key(), new GivenAnswer(asked.constant("others", Answer.class), null, false)));
        if (!more.isEmpty()) {
            keeping.save(screen, regions, more, moment);
        }
    }

    /** The questions of the layers that fit the set and the regions, and the facts that are not read from the age. */
    private static Set<String> dueKeys(Occasion occasion, Set<String> regions) {
        Set<String> keys = new HashSet<>();
        String set = occasion == Occasion.FULL ? "full" : "review";
        for (Entry layer : Content.yaml("red-flags/layers.yaml").entries("layers")) {
            List<String> of = layer.texts("regions");
            if (layer.texts("on").contains(set) && (of.isEmpty() || of.stream().anyMatch(regions::contains))) {
                keys.addAll(layer.texts("keys"));
            }
        }
        Content.yaml("red-flags/facts.yaml").entries("facts").stream().filter(fact -> !fact.has("age_at_least"))
                .forEach(fact -> keys.add(fact.text("key")));
        return keys;
    }

    private void act(DemoVisit visit, Entry action) {
        LocalDateTime at = LocalDateTime.parse(action.text("at"));
        Instant moment = at.atZone(ZoneId.systemDefault()).toInstant();
        switch (action.text("act")) {
            case "call" -> {
                Entry reader = DemoPeople.keyed(visit.clinic(), "correspondents", action.text("to"));
                calls.persist(new FlagAction(visit.file(), action.text("person"), reader.text("role"), at, action.text("outcome"),
                        action.flag("accepted"), visit.clinician(), moment));
            }
            case "raise" -> open(visit, action).stream()
                    .filter(flag -> flag.urgency().compareTo(action.constant("level", Urgency.class)) < 0)
                    .forEach(flag -> flag.raiseTo(action.constant("level", Urgency.class), action.text("reason"), visit.clinician(), moment));
            case "close" -> open(visit, action).forEach(flag -> flag.close(visit.clinician(), action.text("reason"), action.text("seen_by"),
                    LocalDate.parse(action.text("seen_on")), action.optionalText("outcome").orElse(null), moment));
            case "advice", "seen" -> { } // stands in the note of the visit
            default -> throw action.problem("'act' is not known: " + action.text("act"));
        }
    }

    /** The open flags of a question, and those of the rules it feeds that demand as much. */
    private List<Flag> open(DemoVisit visit, Entry action) {
        return flags.of(visit.file().id()).stream().filter(Flag::open)
                .filter(flag -> flag.origin().equals(action.text("key")) || flag.origin().startsWith("CL-")).toList();
    }
}
