package org.steadwork.outcome;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseScope;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.web.ReadOnce;

/** The scores of the cases. */
@ApplicationScoped
public class Scores implements PanacheRepository<Score> {

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    /** All scores of a case, the earliest first. */
    @ReadOnce
    public List<Score> of(long caseId) {
        return list("caseFile.id = ?1 order by scoredOn, id", caseId);
    }

    /** All scores of the open cases of a scope, the earliest first. */
    List<Score> ofOpenCases(CaseScope scope) {
        return scope.bind(getEntityManager().createQuery("from Score s join fetch s.caseFile c where " + scope.open("c", "s.caseFile") + " order by s.scoredOn, s.id", Score.class))
                .getResultList();
    }

    public Optional<Score> on(long caseId, String instrument, LocalDate day) {
        return find("caseFile.id = ?1 and instrument = ?2 and scoredOn = ?3", caseId, instrument, day).firstResultOptional();
    }

    /** The latest score of any of some instruments. */
    public Optional<Score> latestOf(long caseId, Collection<String> keys) {
        return find("caseFile.id = ?1 and instrument in ?2 order by scoredOn desc, id desc", caseId, keys).firstResultOptional();
    }

    /** The latest score of any of some instruments in each open case. */
    public List<Score> latestOfOpenCases(Collection<String> keys) {
        Map<Long, Score> latest = new LinkedHashMap<>();
        list("from Score s join fetch s.caseFile c where c.closedOn is null and s.instrument in ?1 order by s.scoredOn, s.id", keys)
                .forEach(score -> latest.put(score.caseFile().id(), score));
        return List.copyOf(latest.values());
    }

    /** The latest score of an instrument before a day. */
    Optional<Score> before(long caseId, String instrument, LocalDate day) {
        return find("caseFile.id = ?1 and instrument = ?2 and scoredOn < ?3 order by scoredOn desc", caseId, instrument, day).firstResultOptional();
    }

    /** Records answers for a day; a score of that day is corrected, with its history kept. Nothing answered and nothing stored stores nothing. */
    public void record(CaseFile file, Instrument instrument, LocalDate day, List<Integer> answers) {
        record(file, instrument, day, answers, account.displayName());
    }

    /** As {@link #record(CaseFile, Instrument, LocalDate, List)}, naming who answered and who took it over. */
    public void record(CaseFile file, Instrument instrument, LocalDate day, List<Integer> answers, String by) {
        Optional<Score> stored = on(file.id(), instrument.key(), day);
        if (stored.isEmpty() && answers.stream().allMatch(answer -> answer == null)) {
            return;
        }
        if (stored.isPresent() && stored.get().answers().equals(answers)) {
            return;
        }
        Score score = stored.orElseGet(() -> new Score(file, instrument, day));
        score.record(instrument, answers, by, Instant.now(clock));
        persist(score);
    }
}
