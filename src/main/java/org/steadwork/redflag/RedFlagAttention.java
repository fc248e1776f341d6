package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseTab;
import org.steadwork.redflag.rules.Verdict;
import org.steadwork.web.Initial;

/** Tells Today which cases have open flags, calls to make, or screens to finish. */
@ApplicationScoped
class RedFlagAttention implements Attention {

    @Inject
    EntityManager db;

    @Inject
    RedFlags redFlags;

    @Inject
    ReportedRegions reported;

    @Override
    public List<Entry> entries(LocalDate today) {
        Map<Long, Instant> latestCalls = latestCalls();
        List<Entry> entries = new ArrayList<>();
        worstFlagOfEachCase(latestCalls).forEach(flag -> entries.add(ofFlag(flag, latestCalls.get(flag.caseFile().id()))));
        withoutScreen().forEach(file -> entries.add(entry(file, Urgency.SOON, "Not asked", file.openedOn(),
                "No red-flag question has been asked.", "Ask the questions")));
        Map<Long, Set<String>> regions = reported.ofOpenCases();
        newestScreens().stream().filter(screen -> entries.stream().noneMatch(entry -> entry.caseId() == screen.caseFile().id()))
                .forEach(screen -> ofScreen(screen, ReportedRegions.notAskedIn(screen, regions.getOrDefault(screen.caseFile().id(), Set.of())), entries));
        return entries;
    }

    /** The level and the missing call decide which flag of a case speaks for it. */
    private List<Flag> worstFlagOfEachCase(Map<Long, Instant> latestCalls) {
        Comparator<Flag> worse = Comparator.<Flag, Boolean>comparing(flag -> flag.waitsForCall(latestCalls.get(flag.caseFile().id())))
                .thenComparing(Flag::urgency);
        Map<Long, Flag> worst = new LinkedHashMap<>();
        db.createQuery("from Flag f join fetch f.caseFile c join fetch c.patient where f.closedAt is null and c.closedOn is null"
                        + " order by f.raisedAt", Flag.class).getResultList()
                .forEach(flag -> worst.merge(flag.caseFile().id(), flag, (a, b) -> worse.compare(a, b) >= 0 ? a : b));
        return List.copyOf(worst.values());
    }

    private Map<Long, Instant> latestCalls() {
        Map<Long, Instant> latest = new HashMap<>();
        db.createQuery("select a.caseFile.id, max(a.recordedAt) from FlagAction a group by a.caseFile.id", Object[].class)
                .getResultList().forEach(row -> latest.put((Long) row[0], (Instant) row[1]));
        return latest;
    }

    private List<CaseFile> withoutScreen() {
        return db.createQuery("from CaseFile c join fetch c.patient where c.closedOn is null"
                + " and not exists (select 1 from RedFlagScreen s where s.caseFile.id = c.id)", CaseFile.class).getResultList();
    }

    private List<RedFlagScreen> newestScreens() {
        return db.createQuery("from RedFlagScreen s join fetch s.caseFile c join fetch c.patient where c.closedOn is null and s.id ="
                + " (select max(n.id) from RedFlagScreen n where n.caseFile.id = c.id)", RedFlagScreen.class).getResultList();
    }

    private static Entry ofFlag(Flag flag, Instant latestCall) {
        LocalDate since = LocalDate.ofInstant(flag.raisedAt(), ZoneId.systemDefault());
        String what = Initial.large(flag.name()) + (flag.certain() ? "" : ": not known");
        if (flag.waitsForCall(latestCall)) {
            return entry(flag.caseFile(), Urgency.NOW, label(flag), since, what + ". No call on record.", "Record the call").marked("out");
        }
        return switch (flag.urgency()) {
            case EMERGENCY_NOW, SAME_DAY -> entry(flag.caseFile(), Urgency.TODAY, label(flag), since,
                    what + ". A call is on record; whether the patient was seen is not.", "Record who saw them").marked("out");
            case URGENT_2_WEEKS -> entry(flag.caseFile(), Urgency.TODAY, label(flag), since,
                    what + ". A medical look within 2 weeks is asked for.", "Look at the flag").marked("near");
            case DISCUSS_DOCTOR, WATCH -> entry(flag.caseFile(), Urgency.SOON, label(flag), since, what + ".", "Look at the flag");
        };
    }

    private static String label(Flag flag) {
        return Initial.large(flag.urgency().label());
    }

    private void ofScreen(RedFlagScreen screen, Set<String> notAsked, List<Entry> entries) {
        CaseFile file = screen.caseFile();
        if (screen.verdict() == Verdict.INCOMPLETE) {
            int open = screen.openAnswers().size();
            entries.add(entry(file, Urgency.TODAY, "Incomplete", screen.screenedOn(),
                    "Red flags: " + (open == 1 ? "1 answer" : open + " answers") + " missing.", "Finish the screen").marked("none"));
        } else if (!screen.signed()) {
            entries.add(entry(file, Urgency.TODAY, "Unsigned", screen.screenedOn(), "Red-flag screen not signed.", "Sign the screen"));
        } else if (!notAsked.isEmpty()) {
            entries.add(entry(file, Urgency.TODAY, "Incomplete", screen.screenedOn(), "Reported since the last red-flag screen: " + reported.words(notAsked) + ".",
                    "Ask about it").marked("none"));
        } else if (redFlags.outOfDate(screen.screenedOn())) {
            entries.add(entry(file, Urgency.SOON, "Out of date", screen.screenedOn(),
                    "Red-flag screen older than " + redFlags.validDays() + " days.", "Ask the short set"));
        }
    }

    private static Entry entry(CaseFile file, Urgency urgency, String label, LocalDate since, String reason, String action) {
        return new Entry(file.id(), file.patient().name(), urgency, label, since, reason, action, CaseTab.RED_FLAGS.href(file.id()));
    }
}
