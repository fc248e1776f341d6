package org.steadwork.web;

import java.sql.SQLException;

/**
 * A failure as it may stand in the log: kinds, codes and places, without messages. The databases put values into theirs ("Key (name)=(…) already
 * exists"), and a log holds no clinical data.
 */
final class QuietTrace extends RuntimeException {

    private static final int DEEPEST_CAUSE = 12;

    private QuietTrace(Throwable of, int deepest) {
        super(kind(of), of.getCause() == null || of.getCause() == of || deepest == 0 ? null : new QuietTrace(of.getCause(), deepest - 1), false, true);
        setStackTrace(of.getStackTrace());
    }

    static QuietTrace of(Throwable failure) {
        return new QuietTrace(failure, DEEPEST_CAUSE);
    }

    private static String kind(Throwable of) {
        return of.getClass().getName() + (of instanceof SQLException sql ? ", state " + sql.getSQLState() + ", code " + sql.getErrorCode() : "");
    }

    @Override
    public String toString() {
        return getMessage();
    }
}
