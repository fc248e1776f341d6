package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.Answer;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.redflag.CaseStatus;
import org.steadwork.redflag.Flag;
import org.steadwork.redflag.FlagAction;
import org.steadwork.redflag.FlagActions;
import org.steadwork.redflag.Flags;
import org.steadwork.redflag.RedFlagScreen;
import org.steadwork.redflag.RedFlagScreens;
import org.steadwork.redflag.RedFlags;
import org.steadwork.redflag.Suspensions;
import org.steadwork.redflag.rules.Urgency;
import org.steadwork.web.Dates;

/**
 * What the red-flag screen and its open flags say. To an employer goes, without a reason, only that a medical opinion has been
 * advised.
 */
@ApplicationScoped
class RedFlagFacts implements LetterFacts {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final Map<Urgency, String> HOW_SOON = Map.of(Urgency.EMERGENCY_NOW, "now, as an emergency", Urgency.SAME_DAY, "today",
            Urgency.URGENT_2_WEEKS, "within 2 weeks");

    @Inject
    Flags flags;

    @Inject
    FlagActions calls;

    @Inject
    RedFlagScreens screens;

    @Inject
    RedFlags redFlags;

    @Inject
    Suspensions suspensions;

    @Inject
    LetterContent content;

    @Inject
    Clock clock;

    @Override
    public List<LetterFact> of(CaseFile file) {
        List<LetterFact> facts = new ArrayList<>();
        List<Flag> open = open(file);
        calls(file).forEach(call -> facts.add(fact("situation", called(call), "call on record")));
        open.forEach(flag -> facts.add(flag.urgency().atLeast(Urgency.DISCUSS_DOCTOR) ? fact("findings", found(flag), "open red flag")
                : fact("background", upperFirst(flag.name()) + ".", "red-flag screen, to be kept in mind")));
        facts.add(fact("flag_status", status(file), "red flags"));
        screens.latest(file.id()).ifPresent(screen -> answers(screen, facts));
        List<String> stopped = suspensions.inForce(file.id()).stream().map(content.redFlagWords()::stop).distinct().toList();
        if (!stopped.isEmpty()) {
            facts.add(fact("done", "Stopped: " + String.join("; ", stopped) + ".", "suspensions in force"));
        }
        if (open.stream().anyMatch(flag -> flag.urgency().atLeast(Urgency.URGENT_2_WEEKS))) {
            facts.add(new LetterFact(InformationCategory.WORK_MODIFICATIONS, "limited",
                    "A medical opinion has been advised. Until then please keep to the limits in this report.", "open red flag, reason withheld"));
        }
        return facts;
    }

    @Override
    public Map<String, String> values(CaseFile file) {
        Optional<String> soon = Urgency.highest(open(file).stream().map(Flag::urgency).toList()).map(HOW_SOON::get);
        return soon.map(words -> Map.of("how_soon", words)).orElse(Map.of());
    }

    /** Returns what is open now; what is closed later than the clinic's clock says was open at the time of writing. */
    private List<Flag> open(CaseFile file) {
        Instant now = Instant.now(clock);
        return flags.of(file.id()).stream().filter(flag -> flag.open() || flag.closedAt().isAfter(now))
                .sorted(Comparator.comparing(Flag::urgency).reversed()).toList();
    }

    /** Returns the calls made since the day of the latest screen: earlier ones were about something else. */
    private List<FlagAction> calls(CaseFile file) {
        LocalDateTime now = LocalDateTime.now(clock);
        LocalDate since = screens.latest(file.id()).map(RedFlagScreen::screenedOn).orElse(LocalDate.MIN);
        return calls.list("caseFile.id = ?1 order by calledAt, id", file.id()).stream()
                .filter(call -> !call.calledAt().toLocalDate().isBefore(since) && !call.calledAt().isAfter(now)).toList();
    }

    /** Says how the screen stands; nothing asked is incomplete and never clear. */
    private String status(CaseFile file) {
        CaseStatus status = redFlags.status(file.id());
        return status.screenedOn().map(day -> "Red-flag screen of " + Dates.inLetter(day) + ": " + status.verdict().name().toLowerCase(Locale.ROOT)
                + (status.outOfDate() ? ", out of date" : "") + ".").orElse("Red-flag questions have not been asked.");
    }

    /** A flag that rests on an answer of "unknown" is said to be just that. */
    private static String found(Flag flag) {
        return flag.certain() ? "- " + upperFirst(flag.name()) + ". May point to: " + flag.pointsTo() + "."
                : "- Not established, and treated as present: " + flag.name() + ". May point to: " + flag.pointsTo() + ".";
    }

    private static String called(FlagAction call) {
        return "Phoned " + call.called() + (call.role() == null ? "" : ", " + call.role()) + ", on " + Dates.inLetter(call.calledAt().toLocalDate())
                + " at " + TIME.format(call.calledAt()) + (call.said() == null ? "." : ": " + sentence(call.said()));
    }

    private void answers(RedFlagScreen screen, List<LetterFact> facts) {
        String because = "red-flag screen of " + Dates.shown(screen.screenedOn());
        Map<Answer, List<String>> said = screen.answersByKey().values().stream().filter(answer -> content.redFlagWords().asks(answer.key()))
                .collect(Collectors.groupingBy(answer -> answer.answer(), Collectors.mapping(answer -> answer.key(), Collectors.toList())));
        if (said.containsKey(Answer.NO)) {
            facts.add(fact("negatives", negatives(said.get(Answer.NO)), because));
        }
        if (said.containsKey(Answer.UNKNOWN)) {
            facts.add(fact("not_established", "Asked, not known: " + names(said.get(Answer.UNKNOWN)) + ".", because));
        }
        String notAsked = screen.openAnswers().stream().filter(content.redFlagWords()::asks)
                .filter(key -> !screen.answersByKey().containsKey(key) || screen.answersByKey().get(key).answer() == Answer.NOT_ASKED)
                .map(content.redFlagWords()::question).collect(Collectors.joining("; "));
        if (!notAsked.isEmpty()) {
            facts.add(fact("not_established", "Not asked: " + notAsked + ".", because));
        }
    }

    /** Names the negatives a reader in a hurry looks for, those whose "yes" would be an emergency, and counts the others. */
    private String negatives(List<String> keys) {
        List<String> pressing = keys.stream().filter(key -> content.redFlagWords().urgency(key) == Urgency.EMERGENCY_NOW).toList();
        int others = keys.size() - pressing.size();
        if (pressing.isEmpty()) {
            return upperFirst(names(keys)) + ".";
        }
        return upperFirst(names(pressing)) + "." + (others == 0 ? "" : " Also no to the " + others + " less pressing "
                + (others == 1 ? "question" : "questions") + " of the screen.");
    }

    private String names(List<String> keys) {
        return keys.stream().map(content.redFlagWords()::question).collect(Collectors.joining("; "));
    }

    private static LetterFact fact(String section, String text, String because) {
        return new LetterFact(InformationCategory.RED_FLAG_RESULT, section, text, because);
    }

    private static String sentence(String text) {
        return text.matches("(?s).*[.!?]") ? text : text + ".";
    }

    private static String upperFirst(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
