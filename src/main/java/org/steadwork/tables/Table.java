package org.steadwork.tables;

import java.util.List;

/**
 * One table.
 *
 * @param key        the columns of its primary key
 * @param references its foreign keys
 */
public record Table(String name, List<Column> columns, List<String> key, List<Reference> references) {

    public List<String> columnNames() {
        return columns.stream().map(Column::name).toList();
    }

    public boolean has(String column) {
        return columnNames().contains(column);
    }

    public Column column(String column) {
        return columns.stream().filter(one -> one.name().equals(column)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name + " has no column " + column));
    }

    /** The columns through which a row refers to another row of the same table. */
    public List<String> toItself() {
        return references.stream().filter(one -> one.parent().equals(name)).flatMap(one -> one.columns().stream()).distinct().toList();
    }
}
