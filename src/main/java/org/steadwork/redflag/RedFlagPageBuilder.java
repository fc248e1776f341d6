package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.redflag.RedFlagPage.Held;
import org.steadwork.redflag.RedFlagPage.RegionRow;
import org.steadwork.redflag.RedFlagPage.ScreenRow;
import org.steadwork.redflag.rules.CombinationRule;
import org.steadwork.redflag.rules.Occasion;
import org.steadwork.redflag.rules.ScreenResult;
import org.steadwork.redflag.rules.Urgency;
import org.steadwork.redflag.rules.Verdict;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** Gathers what the page of red flags shows, from what is stored or from what was typed. */
@ApplicationScoped
class RedFlagPageBuilder {

    static final List<Option> OCCASIONS = List.of(new Option("review", "Short set, for a review"), new Option("full", "Full set"));

    private static final String NEW = "new";
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    @Inject
    RedFlagContent content;

    @Inject
    RedFlagScreens screens;

    @Inject
    Flags flags;

    @Inject
    FlagActions calls;

    @Inject
    Suspensions suspensions;

    @Inject
    RedFlags redFlags;

    @Inject
    RedFlagSummaries summaries;

    @Inject
    ScreenKeeping keeping;

    @Inject
    ScreenForm forms;

    @Inject
    ScreenQuestions questions;

    @Inject
    ReportedRegions reported;

    @Inject
    FlagRows rows;

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    /** The form of the newest screen, or an empty one, and of a call made just now. */
    Form stored(CaseFile file) {
        LocalDateTime now = LocalDateTime.now(clock);
        return screens.latest(file.id()).map(forms::show).orElseGet(Form::empty).with("occasion", "review")
                .with("calledOn", Dates.shown(now.toLocalDate())).with("calledTime", TIME.format(now));
    }

    RedFlagPage page(CaseFile file, Form form) {
        return page(file, form, screens.latest(file.id()).orElse(null), null);
    }

    /** @param screen the screen shown, or null for a new one; {@code occasion} is that of a new one */
    RedFlagPage page(CaseFile file, Form form, RedFlagScreen screen, Occasion occasion) {
        LocalDate day = screen == null ? LocalDate.now(clock) : screen.screenedOn();
        Set<String> reportedNow = reported.of(file.id());
        Set<String> regions = new LinkedHashSet<>(forms.regions(form));
        regions.addAll(reportedNow);
        Occasion asked = screen == null ? Optional.ofNullable(occasion).orElse(Occasion.FULL) : screen.occasion();
        Set<String> leftOpen = screen == null ? keeping.leftOpen(file.id()) : screen.leftOpen();
        ScreenResult result = keeping.evaluate(file, screen, day, asked, screen != null && screen.signed() ? screen.regions() : regions,
                leftOpen, forms.answers(forms.read(form)));
        List<Flag> all = flags.of(file.id());
        List<Flag> open = all.stream().filter(Flag::open)
                .sorted(Comparator.comparing(Flag::urgency).reversed().thenComparing(Flag::raisedAt)).toList();
        List<FlagAction> made = calls.of(file.id());
        Instant latestCall = made.stream().map(FlagAction::recordedAt).max(Comparator.naturalOrder()).orElse(null);
        // a closed case is not asked again, so its last screen stays what it was
        boolean outOfDate = file.open() && redFlags.outOfDate(day);
        boolean callMissing = open.stream().anyMatch(flag -> flag.waitsForCall(latestCall));
        return new RedFlagPage(summaries.summary(open, screen, result, made.size(), callMissing, outOfDate,
                file.open() && screen != null ? reported.words(ReportedRegions.notAskedIn(screen, reportedNow)) : ""), summaries.steps(file.id(), open), made,
                callMissing, held(all, screen), rows.of(open.stream().filter(flag -> flag.urgency() != Urgency.WATCH).toList(), latestCall, result),
                rows.of(open.stream().filter(flag -> flag.urgency() == Urgency.WATCH).toList(), latestCall, result),
                rows.of(all.stream().filter(flag -> !flag.open()).toList(), latestCall, result),
                result.advice().stream().map(CombinationRule::action).toList(), screenRow(screen, asked, day, result, outOfDate),
                regionRows(regions, reportedNow), questions.layout(result, form, keeping.ages(file.patient().ageOn(day)).keySet()),
                screens.of(file.id()).stream().map(one -> screenRow(one, one.occasion(), one.screenedOn(), null, false)).toList());
    }

    private List<RegionRow> regionRows(Set<String> chosen, Set<String> reportedNow) {
        return content.catalogue().regions().stream()
                .map(region -> new RegionRow(region, content.region(region), chosen.contains(region), reportedNow.contains(region))).toList();
    }

    private List<Held> held(List<Flag> all, RedFlagScreen screen) {
        Set<String> forGood = new LinkedHashSet<>();
        all.forEach(flag -> forGood.addAll(suspensions.barredForGood(flag)));
        Map<String, Held> held = new LinkedHashMap<>();
        for (String token : suspensions.inForce(all, screen)) {
            RedFlagContent.TokenWords words = content.token(token);
            held.put(token, new Held(words.blocks(), words.allowed(), forGood.contains(token)));
        }
        return List.copyOf(held.values());
    }

    /** @param outOfDate never true of a screen in the history, which another followed */
    private ScreenRow screenRow(RedFlagScreen screen, Occasion occasion, LocalDate day, ScreenResult result, boolean outOfDate) {
        if (screen == null) {
            return new ScreenRow(NEW, 0, occasion.label(), day, account.displayName(), false, null, "not asked", result.open().size(), false, false, null);
        }
        String signed = screen.signed() ? "Signed by " + screen.signedBy().displayName() + ", " + Dates.shown(screen.signedAt()) : null;
        List<String> said = new ArrayList<>(List.of(screen.verdict().label()));
        if (!screen.openAnswers().isEmpty() && screen.verdict() == Verdict.POSITIVE) {
            said.add("also incomplete");
        }
        return new ScreenRow(screen.id().toString(), screen.version(), occasion.label(), day, screen.begunBy().displayName(), screen.signed(),
                signed, String.join(", ", said), screen.openAnswers().size(), outOfDate, day.isBefore(LocalDate.now(clock)), Dates.shown(screen.savedAt()));
    }
}
