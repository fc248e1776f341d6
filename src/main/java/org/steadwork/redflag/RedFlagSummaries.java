package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.steadwork.redflag.RedFlagContent.LevelWords;
import org.steadwork.redflag.RedFlagPage.Step;
import org.steadwork.redflag.RedFlagPage.Summary;
import org.steadwork.redflag.rules.CombinationRule;
import org.steadwork.redflag.rules.ScreenResult;
import org.steadwork.redflag.rules.Urgency;
import org.steadwork.redflag.rules.Verdict;
import org.steadwork.web.Dates;
import org.steadwork.web.Initial;

/** Puts the result into plain words: what was found, how fast, what to do, to whom. */
@ApplicationScoped
class RedFlagSummaries {

    private static final int NAMED = 4;

    @Inject
    RedFlagContent content;

    @Inject
    RedFlags redFlags;

    /**
     * @param screen   the newest screen, or null when none is stored
     * @param notAsked regions reported since it was signed, in words; empty for none
     */
    Summary summary(List<Flag> open, RedFlagScreen screen, ScreenResult result, int calls, boolean callMissing, boolean outOfDate, String notAsked) {
        Optional<Urgency> worst = Urgency.highest(open.stream().map(Flag::urgency).toList());
        String missing = missing(result, worst);
        if (worst.isPresent() && worst.get() != Urgency.WATCH) {
            return found(open, worst.get(), missing, calls, callMissing);
        }
        if (screen == null) {
            return new Summary("plain", "Not asked yet",
                    List.of("No question has been asked, so nothing is known. What is not asked is not a no."), null);
        }
        if (result.verdict() == Verdict.INCOMPLETE || result.incomplete()) {
            List<String> sentences = new ArrayList<>(List.of(missing));
            watch(open).ifPresent(sentences::add);
            return new Summary("caution", "Incomplete: not clear", sentences, null);
        }
        if (worst.isPresent()) {
            return new Summary("plain", "Positive: to watch", List.of(watch(open).orElseThrow()), level(worst.get()));
        }
        if (result.verdict() == Verdict.POSITIVE) {
            return new Summary("plain", "Positive, dealt with",
                    List.of("Every flag of this screen has been closed by a clinician. A new screen can be clear."), null);
        }
        if (!screen.signed()) {
            return new Summary("caution", "All no, not signed", List.of("Every due question is no. The screen is clear once a clinician signs it."), null);
        }
        if (!notAsked.isEmpty()) {
            return new Summary("caution", "Incomplete: not clear", List.of("Reported since the last screen: " + notAsked
                    + ". Its questions were not asked. Begin a new screen: they are due in it."), null);
        }
        if (outOfDate) {
            return new Summary("caution", "Out of date", List.of("The last screen was clear on " + Dates.shown(screen.screenedOn())
                    + ". It is older than " + redFlags.validDays() + " days: ask the short set again."), null);
        }
        return new Summary("good", "Clear on " + Dates.shown(screen.screenedOn()),
                List.of("Every due question was answered no. Ask the short set again at the next review, and everything when something changes."), null);
    }

    private Summary found(List<Flag> open, Urgency worst, String missing, int calls, boolean callMissing) {
        LevelWords words = content.level(worst);
        List<Flag> speaking = open.stream().filter(flag -> flag.urgency() == worst).toList();
        boolean certain = speaking.stream().anyMatch(Flag::certain);
        List<String> sentences = new ArrayList<>();
        sentences.add((certain ? "Found: " : "Not known, and acted on as a yes: ") + named(answersBehind(speaking, open)) + ".");
        sentences.add("May point to: " + pointsTo(speaking) + ".");
        if (callMissing) {
            sentences.add("Phone before the patient leaves; the visit cannot be signed without the call.");
        }
        if (missing != null) {
            sentences.add(missing);
        }
        String level = level(worst) + " " + (worst.demandsCall() ? calls(calls) : "Contact: " + words.contactWithin() + ".");
        return new Summary(worst.demandsCall() ? "stop" : "caution", (certain ? "Positive: " : "Unknown, treated as positive: ")
                + Initial.small(words.headline()), sentences, level);
    }

    /** A rule speaks through the flagged answers that it looks at. */
    private List<Flag> answersBehind(List<Flag> speaking, List<Flag> open) {
        Set<Flag> answers = new LinkedHashSet<>();
        for (Flag flag : speaking) {
            Set<String> keys = content.catalogue().rule(flag.origin()).map(CombinationRule::keys).orElse(Set.of());
            List<Flag> behind = open.stream().filter(one -> keys.contains(one.origin())).toList();
            answers.addAll(behind.isEmpty() ? List.of(flag) : behind);
        }
        return List.copyOf(answers);
    }

    private String level(Urgency urgency) {
        return "Level: " + Initial.small(content.level(urgency).name()) + ".";
    }

    private static String calls(int calls) {
        return calls == 0 ? "No call on record." : calls == 1 ? "One call on record." : calls + " calls on record.";
    }

    /** Names rules before questions, since a rule says what several answers amount to. */
    private String named(List<Flag> flags) {
        List<String> names = flags.stream().filter(flag -> content.catalogue().question(flag.origin()).isPresent())
                .map(Flag::name).distinct().toList();
        List<String> shown = names.isEmpty() ? flags.stream().map(flag -> Initial.small(flag.name())).distinct().toList() : names;
        String first = String.join("; ", shown.subList(0, Math.min(NAMED, shown.size())));
        return shown.size() > NAMED ? first + "; and " + (shown.size() - NAMED) + " more" : first;
    }

    private static String pointsTo(List<Flag> flags) {
        Set<String> all = new LinkedHashSet<>();
        flags.forEach(flag -> all.add(Initial.small(flag.pointsTo())));
        return all.stream().limit(NAMED).reduce((a, b) -> a + "; " + b).orElse("");
    }

    private Optional<String> watch(List<Flag> open) {
        List<Flag> watched = open.stream().filter(flag -> flag.urgency() == Urgency.WATCH).toList();
        return watched.isEmpty() ? Optional.empty() : Optional.of("To watch: " + named(watched) + ".");
    }

    /** Says how many answers are open and what they could mean; null when none is. */
    private String missing(ScreenResult result, Optional<Urgency> worst) {
        int open = result.open().size();
        if (open == 0) {
            return null;
        }
        String count = open == 1 ? "1 answer is missing" : open + " answers are missing";
        Urgency could = result.couldBe().orElse(Urgency.WATCH);
        return worst.isPresent() && worst.get().atLeast(could) ? count + "; they do not change the level, and the screen is also incomplete."
                : count + ". They could still mean “" + could.label() + "”: ask before treating, and act on that level until they are given.";
    }

    List<Step> steps(long caseId, List<Flag> open) {
        List<Flag> toAct = open.stream().filter(flag -> flag.urgency() != Urgency.WATCH)
                .sorted(Comparator.comparing(Flag::urgency).reversed()).toList();
        if (toAct.isEmpty()) {
            return List.of();
        }
        Urgency worst = toAct.get(0).urgency();
        LevelWords words = content.level(worst);
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(worst.demandsCall() ? "Phone:" : "Contact:", words.recipient() + ". When: " + words.contactWithin() + "."
                + (worst.demandsCall() ? " Write down the name and number of the person spoken to, and the time." : ""), null, null));
        Set<String> actions = new LinkedHashSet<>();
        toAct.stream().filter(flag -> flag.urgency() == worst).forEach(flag -> actions.add(flag.action()));
        actions.forEach(action -> steps.add(new Step("Do:", action + ".", null, null)));
        if (worst.atLeast(Urgency.URGENT_2_WEEKS)) {
            steps.add(new Step("Write the letter.", "Situation, background, assessment, recommendation.", "/cases/" + caseId + "/letters", "Open the letters"));
        }
        steps.add(new Step("Tell the patient, and give it in writing.", String.join(" ", words.tell()),
                "/cases/" + caseId + "/red-flags/safety-net", "Print the safety-net sheet"));
        steps.add(new Step("Hear whether the patient was seen.", "The entry stays on Today until a clinician closes the flag.", null, null));
        return steps;
    }
}
