package org.steadwork.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/**
 * The different words that occur in names of patients, for a word typed with a slip. They are few beside the patients, and are kept in
 * memory until a patient is added, or for a hundred times as long as it took to read them: a word new through a changed name is found by
 * its beginning at once, and with a slip that much later.
 */
@ApplicationScoped
class NameWords {

    /** From this likeness on, a word may be the one that was meant. Common practice, no source. */
    private static final double LIKE = 0.8;
    private static final int MOST = 20;
    private static final int SHORTEST_WITH_SLIP = 3;
    private static final int TIMES_THE_READING = 100;

    private record Kept(List<String> words, Number lastPatient, long until) {
    }

    @Inject
    EntityManager db;

    private final JaroWinklerSimilarity likeness = new JaroWinklerSimilarity();
    private volatile Kept kept;

    /** Returns the words most like the one typed, the likeliest first, at most {@value #MOST}. */
    List<String> like(String typed) {
        record Likely(String word, double score) {
        }
        return words().stream().map(word -> new Likely(word, score(typed, word))).filter(one -> one.score() >= LIKE)
                .sorted(Comparator.comparingDouble(Likely::score).reversed().thenComparing(Likely::word)).limit(MOST).map(Likely::word).toList();
    }

    /** How well every word typed finds a word of the name, in [0, 1]: 1 for the start of a word, less for a likeness. */
    double scoreOf(String key, String name) {
        String[] words = name.split(" ");
        String[] typed = key.split(" ");
        double total = 0;
        for (String part : typed) {
            double best = 0;
            for (String word : words) {
                best = Math.max(best, score(part, word));
            }
            total += best;
        }
        return total / typed.length;
    }

    /** Forgets the words; they are read again when they are needed. */
    void forget() {
        kept = null;
    }

    private double score(String typed, String word) {
        if (word.startsWith(typed)) {
            return 1;
        }
        if (typed.length() < SHORTEST_WITH_SLIP) {
            return 0;
        }
        String start = word.length() > typed.length() ? word.substring(0, typed.length()) : word;
        return Math.max(likeness.apply(typed, word), likeness.apply(typed, start)) * 0.98;
    }

    private List<String> words() {
        Number last = (Number) db.createNativeQuery("select max(id) from patient").getSingleResult();
        Kept now = kept;
        if (now == null || !now.lastPatient().equals(last) || System.nanoTime() - now.until() > 0) {
            long begun = System.nanoTime();
            @SuppressWarnings("unchecked")
            List<String> words = db.createNativeQuery("select distinct word from patient_word", String.class).getResultList();
            long done = System.nanoTime();
            now = new Kept(List.copyOf(words), last == null ? 0 : last, done + TIMES_THE_READING * (done - begun));
            kept = now;
        }
        return now.words();
    }
}
