package org.steadwork.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Finds patients by the words of their names. Every word typed begins a word of the name, or, with slips, is like one. Either way at most
 * {@value #CANDIDATES} are looked at, however many the clinic has.
 */
@ApplicationScoped
class NameSearch {

    static final int CANDIDATES = 60;
    private static final int MOST_WORDS = 6;

    @Inject
    EntityManager db;

    @Inject
    NameWords known;

    /** Returns the numbers of patients with a word that begins as each word typed. */
    List<Long> beginning(String key) {
        List<String> typed = words(key);
        StringBuilder sql = new StringBuilder("select w.patient_id from patient_word w where w.beginning = :beginning and w.word like :word0");
        for (int i = 1; i < typed.size(); i++) {
            sql.append(" and exists (select 1 from patient_word o where o.patient_id = w.patient_id and o.word like :word").append(i).append(')');
        }
        Query query = db.createNativeQuery(sql.append(" order by w.beginning, w.word, w.patient_id").toString()).setParameter("beginning", NameWord.beginning(typed.get(0)));
        for (int i = 0; i < typed.size(); i++) {
            query.setParameter("word" + i, typed.get(i) + "%");
        }
        return numbers(query);
    }

    /** Returns the numbers of patients with a word like each word typed; empty when one of them is like none that is known. */
    List<Long> similar(String key) {
        List<String> typed = words(key);
        List<List<String>> meant = new ArrayList<>();
        for (String word : typed) {
            List<String> like = known.like(word);
            if (like.isEmpty()) {
                return List.of();
            }
            meant.add(like);
        }
        StringBuilder sql = new StringBuilder("select w.patient_id from patient_word w where w.word in (:words0)");
        for (int i = 1; i < typed.size(); i++) {
            sql.append(" and exists (select 1 from patient_word o where o.patient_id = w.patient_id and (o.word in (:words").append(i).append(") or o.word like :begun").append(i)
                    .append("))");
        }
        // the likeliest word first, so that a word that many bear does not crowd out the one that was meant
        List<String> likeliest = meant.get(0);
        sql.append(" order by case w.word");
        for (int i = 0; i < likeliest.size(); i++) {
            sql.append(" when :likely").append(i).append(" then ").append(i);
        }
        Query query = db.createNativeQuery(sql.append(" end, w.patient_id").toString());
        for (int i = 0; i < typed.size(); i++) {
            query.setParameter("words" + i, meant.get(i));
            if (i > 0) {
                // more words may begin so than are offered as likely
                query.setParameter("begun" + i, typed.get(i) + "%");
            }
        }
        for (int i = 0; i < likeliest.size(); i++) {
            query.setParameter("likely" + i, likeliest.get(i));
        }
        return numbers(query);
    }

    /** The longest first: it is likely to be the rarest. */
    private static List<String> words(String key) {
        return Arrays.stream(key.split(" ")).distinct().sorted(Comparator.comparing(String::length).reversed()).limit(MOST_WORDS).toList();
    }

    private static List<Long> numbers(Query query) {
        List<?> rows = query.setMaxResults(CANDIDATES).getResultList();
        return rows.stream().map(row -> ((Number) row).longValue()).distinct().toList();
    }
}
