package org.steadwork.storage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What the writers were told is stored, written down outside the process that is killed. */
final class WriterBook {

    /**
     * One acknowledged write.
     *
     * @param kind  patient, case, symptoms or letter
     * @param where the number of the patient, case, report or letter it went to
     * @param words what was written
     */
    record Line(String kind, long where, String words) {
    }

    private final List<Line> lines = Collections.synchronizedList(new ArrayList<>());
    private final List<String> surprises = Collections.synchronizedList(new ArrayList<>());

    void acknowledge(String kind, long where, String words) {
        lines.add(new Line(kind, where, words));
    }

    /** Something other than the end of the process stopped a writer. */
    void surprise(String what) {
        surprises.add(what);
    }

    List<String> surprises() {
        return surprises;
    }

    List<Line> lines(String kind) {
        synchronized (lines) {
            return lines.stream().filter(line -> line.kind().equals(kind)).toList();
        }
    }

    int acknowledged() {
        return lines.size();
    }
}
