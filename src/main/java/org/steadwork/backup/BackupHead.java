package org.steadwork.backup;

import java.util.List;
import org.steadwork.tables.Column;

/**
 * What a backup says of itself before its rows.
 *
 * @param product  {@value #PRODUCT}
 * @param format   {@value #FORMAT}; a higher one is refused
 * @param schema   the version of the last migration its database had
 * @param demo     whether it holds the invented demo clinic
 * @param madeAt   ISO-8601
 * @param database H2 or PostgreSQL, for information
 */
record BackupHead(String product, int format, String schema, boolean demo, String madeAt, String database, List<Part> tables) {

    static final String PRODUCT = "steadwork";
    static final int FORMAT = 1;

    /** One table: its columns in the order of the values, and how many rows follow. */
    record Part(String name, List<Column> columns, long rows) {
    }

    long rows() {
        return tables.stream().mapToLong(Part::rows).sum();
    }
}
