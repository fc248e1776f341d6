package org.steadwork.web;

import jakarta.persistence.OptimisticLockException;
import java.sql.SQLException;
import java.util.Set;
import java.util.stream.Stream;

/** Tells whether a failure means that two writers met at one moment: a row that is there already, or one that changed since it was read. */
public final class Collision {

    /** What SQL calls a key that exists already, a lock that could not be had, and two writers that wait for each other. */
    private static final Set<String> STATES = Set.of("23505", "55P03", "HYT00", "40P01", "40001");
    private static final int DEEPEST_CAUSE = 12;

    private Collision() {
    }

    public static boolean in(Throwable failure) {
        return in(failure, DEEPEST_CAUSE);
    }

    private static boolean in(Throwable e, int deepest) {
        if (e == null || deepest == 0) {
            return false;
        }
        return e instanceof OptimisticLockException || e instanceof SQLException sql && sql.getSQLState() != null && STATES.contains(sql.getSQLState())
                || in(e.getCause(), deepest - 1) || Stream.of(e.getSuppressed()).anyMatch(one -> in(one, deepest - 1));
    }
}
