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
import java.util.stream.Collectors;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseScope;
import org.steadwork.casefile.CaseTab;
import org.steadwork.redflag.rules.Verdict;
import org.steadwork.web.Dates;
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

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of("red_flag_call", "red_flag_seen", "red_flag_medical_look", "red_flag_open", "red_flags_not_asked", "red_flag_screen_incomplete",
                "red_flag_screen_unsigned", "red_flag_region_not_asked", "red_flag_screen_old");
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        Map<Long, Instant> latestCalls = latestCalls(scope);
        List<Entry> entries = new ArrayList<>();
        worstFlagOfEachCase(latestCalls, scope).forEach(flag -> entries.add(ofFlag(flag, latestCalls.get(flag.caseFile().id()))));
        withoutScreen(scope).forEach(file -> entries.add(entry("red_flags_not_asked", file, "", file.openedOn(), Map.of())));
        Map<Long, Set<String>> regions = reported.ofOpenCases(scope);
        Set<Long> told = entries.stream().map(Entry::caseId).collect(Collectors.toSet());
        newestScreens(scope).stream().filter(screen -> !told.contains(screen.caseFile().id()))
                .forEach(screen -> ofScreen(screen, ReportedRegions.notAskedIn(screen, regions.getOrDefault(screen.caseFile().id(), Set.of())), entries));
        return entries;
    }

    /** The level and the missing call decide which flag of a case speaks for it. */
    private List<Flag> worstFlagOfEachCase(Map<Long, Instant> latestCalls, CaseScope scope) {
        Comparator<Flag> worse = Comparator.<Flag, Boolean>comparing(flag -> flag.waitsForCall(latestCalls.get(flag.caseFile().id())))
                .thenComparing(Flag::urgency);
        Map<Long, Flag> worst = new LinkedHashMap<>();
        scope.bind(db.createQuery("from Flag f join fetch f.caseFile c join fetch c.patient where f.closedAt is null and " + scope.open("c", "f.caseFile")
                        + " order by f.raisedAt", Flag.class)).getResultList()
                .forEach(flag -> worst.merge(flag.caseFile().id(), flag, (a, b) -> worse.compare(a, b) >= 0 ? a : b));
        return List.copyOf(worst.values());
    }

    private Map<Long, Instant> latestCalls(CaseScope scope) {
        Map<Long, Instant> latest = new HashMap<>();
        scope.bind(db.createQuery("select c.id, max(a.recordedAt) from FlagAction a join a.caseFile c where " + scope.open("c", "a.caseFile") + " group by c.id", Object[].class))
                .getResultList().forEach(row -> latest.put((Long) row[0], (Instant) row[1]));
        return latest;
    }

    private List<CaseFile> withoutScreen(CaseScope scope) {
        return scope.bind(db.createQuery("from CaseFile c join fetch c.patient where " + scope.open("c")
                + " and not exists (select 1 from RedFlagScreen s where s.caseFile.id = c.id)", CaseFile.class)).getResultList();
    }

    private List<RedFlagScreen> newestScreens(CaseScope scope) {
        return scope.bind(db.createQuery("from RedFlagScreen s join fetch s.caseFile c join fetch c.patient where " + scope.open("c", "s.caseFile") + " and s.id ="
                + " (select max(n.id) from RedFlagScreen n where n.caseFile.id = c.id)", RedFlagScreen.class)).getResultList();
    }

    private Entry ofFlag(Flag flag, Instant latestCall) {
        LocalDate since = LocalDate.ofInstant(flag.raisedAt(), ZoneId.systemDefault());
        String rule = flag.waitsForCall(latestCall) ? "red_flag_call" : switch (flag.urgency()) {
            case EMERGENCY_NOW, SAME_DAY -> "red_flag_seen";
            case URGENT_2_WEEKS -> "red_flag_medical_look";
            case DISCUSS_DOCTOR, WATCH -> "red_flag_open";
        };
        return entry(rule, flag.caseFile(), "", since, Map.of("flag", Initial.large(flag.name()) + (flag.certain() ? "" : ": not known"),
                "level", Initial.large(flag.urgency().label()))).at(2 * flag.urgency().ordinal() + (flag.certain() ? 1 : 0));
    }

    private void ofScreen(RedFlagScreen screen, Set<String> notAsked, List<Entry> entries) {
        CaseFile file = screen.caseFile();
        String subject = String.valueOf(screen.id());
        if (screen.verdict() == Verdict.INCOMPLETE) {
            int open = screen.openAnswers().size();
            entries.add(entry("red_flag_screen_incomplete", file, subject, screen.screenedOn(), Map.of("missing", open == 1 ? "1 answer" : open + " answers")).at(open));
        } else if (!screen.signed()) {
            entries.add(entry("red_flag_screen_unsigned", file, subject, screen.screenedOn(), Map.of("day", Dates.shown(screen.screenedOn()))));
        } else if (!notAsked.isEmpty()) {
            entries.add(entry("red_flag_region_not_asked", file, subject, screen.screenedOn(), Map.of("regions", reported.words(notAsked))).at(notAsked.size()));
        } else if (redFlags.outOfDate(screen.screenedOn())) {
            entries.add(entry("red_flag_screen_old", file, subject, screen.screenedOn(), Map.of("day", Dates.shown(screen.screenedOn()),
                    "valid", redFlags.validDays() + " days")));
        }
    }

    private Entry entry(String rule, CaseFile file, String subject, LocalDate since, Map<String, String> facts) {
        return rules.rule(rule).entry(file, subject, since, CaseTab.RED_FLAGS.href(file.id()), facts);
    }
}
