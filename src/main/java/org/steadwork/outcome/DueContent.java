package org.steadwork.outcome;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;

/** Reads what is asked in every case; a wrong entry stops the start with file, line and reason. */
final class DueContent {

    private DueContent() {
    }

    /**
     * One measure that every case is asked.
     *
     * @param fromVisit the number of the visit from which it has a meaning, counted over the visits that took place
     * @param toVisit   the last such visit at which it is asked for the first time; 0 for any
     * @param insteadOf keys of measures that ask the same: with a score of one of them it is not asked
     */
    record Asked(String instrument, int fromVisit, int toVisit, List<String> insteadOf) {
    }

    static List<Asked> read(Instruments instruments) {
        return read(Content.yaml("instruments/due.yaml"), instruments);
    }

    /** Days after which a goal is to be rated again, from 1. */
    static int goalsEveryDays() {
        Entry entry = Content.yaml("instruments/due.yaml");
        int days = entry.integer("goals_every_days");
        if (days < 1) {
            throw entry.problem("'goals_every_days' counts from 1");
        }
        return days;
    }

    static List<Asked> read(Entry entry, Instruments instruments) {
        entry.text("source");
        List<Asked> asked = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Entry row : entry.entries("asked")) {
            String key = row.text("instrument");
            if (instruments.find(key).isEmpty()) {
                throw row.problem("there is no instrument '" + key + "'");
            }
            if (!seen.add(key)) {
                throw row.problem("'" + key + "' stands twice");
            }
            if (row.integer("from_visit") < 1) {
                throw row.problem("'from_visit' counts from 1");
            }
            int toVisit = row.has("to_visit") ? row.integer("to_visit") : 0;
            if (row.has("to_visit") && toVisit < row.integer("from_visit")) {
                throw row.problem("'to_visit' is not before 'from_visit'");
            }
            asked.add(new Asked(key, row.integer("from_visit"), toVisit, row.texts("instead_of")));
        }
        return List.copyOf(asked);
    }
}
