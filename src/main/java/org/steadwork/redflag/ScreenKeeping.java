package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visits;
import org.steadwork.kernel.Answer;
import org.steadwork.redflag.rules.Catalogue;
import org.steadwork.redflag.rules.Occasion;
import org.steadwork.redflag.rules.OpenAnswer;
import org.steadwork.redflag.rules.Raised;
import org.steadwork.redflag.rules.ScreenAnswers;
import org.steadwork.redflag.rules.ScreenResult;

/** Begins screens, takes their answers, and raises the flags that the answers bring. */
@ApplicationScoped
public class ScreenKeeping {

    @Inject
    RedFlagContent content;

    @Inject
    RedFlagScreens screens;

    @Inject
    Flags flags;

    @Inject
    Visits visits;

    /** Begins a screen; what the screen before left open stays due in it. */
    public RedFlagScreen begin(CaseFile file, Occasion occasion, Account by, Instant now) {
        LocalDate day = LocalDate.ofInstant(now, ZoneId.systemDefault());
        Set<String> leftOpen = leftOpen(file.id());
        RedFlagScreen screen = new RedFlagScreen(file, visits.on(file.id(), day).orElse(null), occasion, day, leftOpen, by, now);
        screens.persist(screen);
        return screen;
    }

    Set<String> leftOpen(long caseId) {
        return screens.latest(caseId).map(this::leftOpenBy).orElse(Set.of());
    }

    /** Only questions and facts stay due; a published rule is asked again when its question is. */
    private Set<String> leftOpenBy(RedFlagScreen screen) {
        Catalogue catalogue = content.catalogue();
        return screen.openAnswers().stream().filter(key -> catalogue.question(key).isPresent() || catalogue.fact(key).isPresent())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Takes answers over, raises flags, and notes what the screen says; nothing here closes or lowers a flag. */
    public ScreenResult save(RedFlagScreen screen, Set<String> regions, Map<String, GivenAnswer> given, Instant now) {
        screen.answer(regions, given, now);
        ScreenResult result = evaluate(screen);
        Set<String> open = result.open().stream().map(OpenAnswer::key).collect(Collectors.toCollection(LinkedHashSet::new));
        result.raised().stream().filter(raised -> !raised.certain()).forEach(raised -> open.addAll(raised.because()));
        screen.concluded(result.verdict(), open, untilAsked(result));
        screens.flush();
        List<Flag> known = flags.of(screen.caseFile().id());
        for (Raised raised : result.raised()) {
            raise(screen, raised, known, now);
        }
        return result;
    }

    private void raise(RedFlagScreen screen, Raised raised, List<Flag> known, Instant now) {
        List<Flag> same = known.stream().filter(flag -> flag.origin().equals(raised.origin())).toList();
        same.stream().filter(Flag::open).findFirst().ifPresentOrElse(flag -> flag.foundAgain(screen, raised, now), () -> {
            // saving the same screen once more does not raise again what was closed in it, unless it got worse or sure
            boolean dealtWith = same.stream().anyMatch(flag -> flag.screen().id().equals(screen.id())
                    && flag.foundUrgency().atLeast(raised.urgency()) && (flag.certain() || !raised.certain()));
            if (!dealtWith) {
                flags.persist(new Flag(screen, raised, now));
            }
        });
    }

    private static Set<String> untilAsked(ScreenResult result) {
        Set<String> tokens = new LinkedHashSet<>(result.suspended());
        result.raised().forEach(raised -> tokens.removeAll(raised.suspends()));
        return tokens;
    }

    ScreenResult evaluate(RedFlagScreen screen) {
        return evaluate(screen.caseFile(), screen, screen.screenedOn(), screen.occasion(), screen.regions(), screen.leftOpen(), screen.given());
    }

    /**
     * Evaluates answers for a case with the ages that its patient has on the day.
     *
     * @param screen the screen answered, or null for one not stored yet
     */
    ScreenResult evaluate(CaseFile file, RedFlagScreen screen, LocalDate day, Occasion occasion, Set<String> regions, Set<String> leftOpen, ScreenAnswers given) {
        return content.screening().evaluate(occasion, regions, newRegions(file.id(), screen, regions), leftOpen, given.with(ages(file.patient().ageOn(day))));
    }

    /** Regions that no earlier screen asked about; none at the first screen, and none after one that asked about every region. */
    private Set<String> newRegions(long caseId, RedFlagScreen screen, Set<String> regions) {
        List<RedFlagScreen> earlier = screens.of(caseId).stream().filter(one -> screen == null || one.id() < screen.id()).toList();
        if (earlier.isEmpty() || earlier.stream().anyMatch(one -> one.regions().isEmpty())) {
            return Set.of();
        }
        Set<String> fresh = new LinkedHashSet<>(regions);
        earlier.forEach(one -> fresh.removeAll(one.regions()));
        return fresh;
    }

    /** Answers the facts and rule items that are read from the age in completed years. */
    Map<String, Answer> ages(int years) {
        Map<String, Answer> ages = new HashMap<>();
        Stream.concat(content.catalogue().facts().stream().map(fact -> Map.entry(fact.key(), fact.ageAtLeast())),
                        content.publishedRules().values().stream().flatMap(rule -> rule.items().stream())
                                .map(item -> Map.entry(item.key(), item.ageAtLeast())))
                .filter(entry -> entry.getValue().isPresent())
                .forEach(entry -> ages.put(entry.getKey(), yes(years, entry.getValue())));
        return ages;
    }

    private static Answer yes(int years, OptionalInt atLeast) {
        return years >= atLeast.getAsInt() ? Answer.YES : Answer.NO;
    }
}
