package org.steadwork.storage;

import java.sql.SQLException;
import org.steadwork.kernel.RefusedStartException;

/** Says in words why a database does not open. */
final class Troubles {

    private static final int IN_USE = 90020;
    private static final int WRONG_KEY = 90049;
    private static final int NEWER_FORMAT = 90048;
    private static final int DAMAGED = 90030;
    private static final int READ_ONLY = 90097;
    private static final String KEPT = " Nothing was changed.";

    private Troubles() {
    }

    static RefusedStartException opening(DatabasePlace place, SQLException e) {
        return new RefusedStartException(place.h2File() ? ofH2(place, e) : ofPostgresql(place, e), e);
    }

    private static String ofH2(DatabasePlace place, SQLException e) {
        return switch (e.getErrorCode()) {
            case IN_USE -> "The clinic in " + place.folder() + " is open in another process already; a data folder serves one at a time."
                    + " Use that one, or end it first." + KEPT;
            case WRONG_KEY -> "The database key does not open " + place + ": it is not the one the file was sealed with." + KEPT;
            case READ_ONLY -> place + " cannot be written to." + KEPT;
            case NEWER_FORMAT -> place + " was written by another version of the database. Start it with the program that wrote it." + KEPT;
            case DAMAGED -> damaged(place);
            default -> "28000".equals(e.getSQLState()) ? place + " does not let this user in: look at quarkus.datasource.username and password." + KEPT
                    : message(e).contains("No space left") ? "The disk of " + place.folder() + " is full. Make room and start again." + KEPT : damaged(place);
        };
    }

    private static String damaged(DatabasePlace place) {
        return place + " is damaged and does not open. Keep a copy of it as it is, and restore the last backup:"
                + " restore FILE --move-old-aside." + KEPT;
    }

    private static String ofPostgresql(DatabasePlace place, SQLException e) {
        String state = String.valueOf(e.getSQLState());
        return switch (state) {
            case "28P01", "28000", "08004" -> "The database at " + place + " does not let this user in: look at quarkus.datasource.username and password." + KEPT;
            case "3D000" -> "There is no database at " + place + ". Make it, or mend quarkus.datasource.jdbc.url." + KEPT;
            case "53300" -> "The database at " + place + " takes no more connections: raise its max_connections, or lower quarkus.datasource.jdbc.max-size of the nodes." + KEPT;
            case "57P03" -> "The database at " + place + " is still starting. Try again in a moment." + KEPT;
            default -> state.startsWith("08") ? "The database at " + place + " does not answer. Is it running, and is the address right?" + KEPT
                    : "The database at " + place + " does not open (" + state + ")." + KEPT;
        };
    }

    private static String message(Throwable e) {
        StringBuilder all = new StringBuilder();
        for (Throwable one = e; one != null; one = one.getCause()) {
            all.append(one.getMessage()).append('\n');
        }
        return all.toString();
    }
}
