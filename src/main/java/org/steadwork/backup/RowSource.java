package org.steadwork.backup;

import java.sql.SQLException;
import java.util.Map;

/** Where the rows of a whole clinic come from. */
interface RowSource {

    /** Hands every row on, table by table, and returns the fingerprint of each table. */
    Map<String, String> read(BackupFile.Rows rows) throws SQLException;
}
