package org.steadwork.redflag;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CasePart;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.Visits;
import org.steadwork.redflag.rules.Urgency;
import org.steadwork.redflag.rules.Verdict;
import org.steadwork.web.Dates;
import org.steadwork.web.Initial;

/** What red flags add to every page of a case: the state in the rail, the open cautions, the word in the navigation. */
@RequestScoped
class RedFlagRail implements CasePart {

    @Inject
    RedFlags redFlags;

    @Inject
    Flags flags;

    @Inject
    RedFlagScreens screens;

    @Inject
    ReportedRegions reported;

    @Inject
    DischargeBars discharge;

    @Inject
    Visits visits;

    private Long loadedFor;
    private List<Flag> all;
    private Optional<RedFlagScreen> latest;
    private Set<String> notAsked;

    @Override
    public List<Fact> facts(CaseFile file) {
        load(file);
        CaseStatus status = redFlags.status(all, latest, notAsked);
        return List.of(new Fact(50, "Red flags", word(status), note(status, file), mark(status, file)));
    }

    @Override
    public List<Caution> cautions(CaseFile file) {
        load(file);
        String href = CaseTab.RED_FLAGS.href(file.id());
        List<Caution> cautions = new ArrayList<>();
        List<Flag> open = all.stream().filter(flag -> flag.open() && flag.urgency().atLeast(Urgency.DISCUSS_DOCTOR))
                .sorted(Comparator.comparing(Flag::urgency).reversed()).toList();
        if (!open.isEmpty()) {
            // the worst speaks for the others, which stand on their page: one stop a page, and a rail that can be read
            Flag worst = open.get(0);
            String more = open.size() > 1 ? "; " + (open.size() - 1) + " more" : "";
            cautions.add(new Caution(worst.urgency().demandsCall(), sentence(worst) + more, href));
        }
        long watched = all.stream().filter(flag -> flag.open() && flag.urgency() == Urgency.WATCH).count();
        if (watched > 0) {
            cautions.add(new Caution(false, watched == 1 ? "1 answer to watch" : watched + " answers to watch", href));
        }
        CaseStatus status = redFlags.status(all, latest, notAsked);
        if (status.verdict() == Verdict.INCOMPLETE) {
            cautions.add(new Caution(false, latest.isEmpty() ? "Red flags not asked" : notAsked.isEmpty() ? "Red-flag screen incomplete"
                    : "Red flags not asked since reported: " + reported.words(notAsked), href));
        } else if (outOfDate(status, file)) {
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
        CaseStatus status = redFlags.status(all, latest, notAsked);
        if (status.verdict() == Verdict.CLEAR) {
            return outOfDate(status, file) ? Optional.of("out of date") : Optional.empty();
        }
        return Optional.of(word(status));
    }

    @Override
    public List<String> closingBars(CaseFile file) {
        load(file);
        return discharge.of(file, visits.lastAttended(file.id()), all, latest);
    }

    List<Flag> flags(CaseFile file) {
        load(file);
        return all;
    }

    Optional<RedFlagScreen> latest(CaseFile file) {
        load(file);
        return latest;
    }

    /** Each query once a request, however often the page asks. */
    private void load(CaseFile file) {
        if (!file.id().equals(loadedFor)) {
            all = flags.of(file.id());
            latest = screens.latest(file.id());
            // a closed case is not asked again
            notAsked = file.open() ? latest.map(reported::notAskedIn).orElse(Set.of()) : Set.of();
            loadedFor = file.id();
        }
    }

    /** A closed case is not asked again, so its last screen stays what it was. */
    private static boolean outOfDate(CaseStatus status, CaseFile file) {
        return file.open() && status.outOfDate();
    }

    private static String sentence(Flag flag) {
        String name = Initial.large(flag.name());
        return name + (flag.certain() ? "" : ": not known") + ", " + flag.urgency().label();
    }

    private static String word(CaseStatus status) {
        return status.screenedOn().isEmpty() ? "not asked" : status.verdict().label();
    }

    private static String note(CaseStatus status, CaseFile file) {
        return status.screenedOn().map(day -> status.highestOpen().map(level -> level.label() + ", ").orElse("") + Dates.shown(day)
                + (outOfDate(status, file) ? ", out of date" : "") + (status.signed() ? "" : ", not signed")).orElse(null);
    }

    private static String mark(CaseStatus status, CaseFile file) {
        return switch (status.verdict()) {
            case CLEAR -> outOfDate(status, file) ? "open" : "in";
            case INCOMPLETE -> "none";
            case POSITIVE -> "out";
        };
    }
}
