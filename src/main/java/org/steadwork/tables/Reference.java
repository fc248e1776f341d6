package org.steadwork.tables;

import java.util.List;

/**
 * A foreign key.
 *
 * @param columns       in the table that refers
 * @param parentColumns in the table referred to, in the same order
 */
public record Reference(List<String> columns, String parent, List<String> parentColumns) {
}
