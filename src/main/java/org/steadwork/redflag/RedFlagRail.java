package org.steadwork.redflag;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CasePart;
import org.steadwork.casefile.CaseTab;
import org.steadwork.redflag.rules.Urgency;
import org.steadwork.redflag.rules.Verdict;
import org.steadwork.web.Dates;

/** What red flags add to every page of a case: the state in the rail, the open cautions, the word in the navigation. */
@RequestScoped
class RedFlagRail implements CasePart {

    @Inject
    RedFlags redFlags;

    @Inject
    Flags flags;

    @Inject
    RedFlagScreens screens;

    private Long loadedFor;
    private List<Flag> all;
    private Optional<RedFlagScreen> latest;

    @Override
    public List<Fact> facts(CaseFile file) {
        load(file);
        CaseStatus status = redFlags.status(all, latest);
        return List.of(new Fact(50, "Red flags", word(status), note(status), mark(status)));
    }

    @Override
    public List<Caution> cautions(CaseFile file) {
        load(file);
        String href = CaseTab.RED_FLAGS.href(file.id());
        List<Caution> cautions = new ArrayList<>();
        List<Flag> open = all.stream().filter(flag -> flag.open() && flag.urgency().atLeast(Urgency.DISCUSS_DOCTOR))
                .sorted(Comparator.comparing(Flag::urgency).reversed()).toList();
        for (Flag flag : open) {
            // one stop a page is enough: the first speaks for the others, which stand in the rail
            boolean stop = cautions.isEmpty() && flag.urgency().demandsCall();
            cautions.add(new Caution(stop, sentence(flag) + (stop && open.size() > 1 ? "; " + (open.size() - 1) + " more" : ""), href));
        }
        long watched = all.stream().filter(flag -> flag.open() && flag.urgency() == Urgency.WATCH).count();
        if (watched > 0) {
            cautions.add(new Caution(false, watched == 1 ? "1 answer to watch" : watched + " answers to watch", href));
        }
        CaseStatus status = redFlags.status(all, latest);
        if (status.verdict() == Verdict.INCOMPLETE) {
            cautions.add(new Caution(false, latest.isEmpty() ? "Red flags not asked" : "Red-flag screen incomplete", href));
        } else if (status.outOfDate()) {
            cautions.add(new Caution(false, "Red-flag screen out of date", href));
        }
        return cautions;
    }

    @Override
    public Optional<String> mark(CaseTab tab, CaseFile file) {
        if (tab != CaseTab.RED_FLAGS) {
            return Optional.empty();
        }
        load(file);
        CaseStatus status = redFlags.status(all, latest);
        return status.verdict() == Verdict.CLEAR && !status.outOfDate() ? Optional.empty() : Optional.of(word(status));
    }

    @Override
    public List<String> closingBars(CaseFile file) {
        load(file);
        return all.stream().filter(flag -> flag.open() && flag.urgency().atLeast(Urgency.URGENT_2_WEEKS))
                .map(flag -> "Red flag open: " + sentence(flag) + ".").toList();
    }

    /** Both queries once a request, however often the page asks. */
    private void load(CaseFile file) {
        if (!file.id().equals(loadedFor)) {
            all = flags.of(file.id());
            latest = screens.latest(file.id());
            loadedFor = file.id();
        }
    }

    private static String sentence(Flag flag) {
        String name = Character.toUpperCase(flag.name().charAt(0)) + flag.name().substring(1);
        return name + (flag.certain() ? "" : ": not known") + ", " + flag.urgency().label();
    }

    private static String word(CaseStatus status) {
        return status.screenedOn().isEmpty() ? "not asked" : status.verdict().label();
    }

    private static String note(CaseStatus status) {
        return status.screenedOn().map(day -> status.highestOpen().map(level -> level.label() + ", ").orElse("") + Dates.shown(day)
                + (status.outOfDate() ? ", out of date" : "") + (status.signed() ? "" : ", not signed")).orElse(null);
    }

    private static String mark(CaseStatus status) {
        return switch (status.verdict()) {
            case CLEAR -> status.outOfDate() ? "open" : "in";
            case INCOMPLETE -> "none";
            case POSITIVE -> "out";
        };
    }
}
