package org.steadwork.tables;

import java.sql.Types;

/** What a column holds, the same on every database the product serves. */
public enum ColumnKind {
    LONG(Types.BIGINT), DECIMAL(Types.NUMERIC), DOUBLE(Types.DOUBLE), TEXT(Types.VARCHAR), BOOLEAN(Types.BOOLEAN), DATE(Types.DATE),
    MOMENT(Types.TIMESTAMP_WITH_TIMEZONE), LOCAL_MOMENT(Types.TIMESTAMP), BYTES(Types.VARBINARY);

    private final int nullType;

    ColumnKind(int nullType) {
        this.nullType = nullType;
    }

    int nullType() {
        return nullType;
    }

    /**
     * Tells the kind from what the driver says.
     *
     * @throws IllegalStateException for a type that no table of ours uses
     */
    static ColumnKind of(String table, String column, int sqlType, String typeName) {
        return switch (sqlType) {
            case Types.BIGINT, Types.INTEGER, Types.SMALLINT, Types.TINYINT -> LONG;
            case Types.NUMERIC, Types.DECIMAL -> DECIMAL;
            case Types.DOUBLE, Types.FLOAT, Types.REAL -> DOUBLE;
            case Types.VARCHAR, Types.CHAR, Types.CLOB, Types.LONGVARCHAR -> TEXT;
            case Types.BOOLEAN, Types.BIT -> BOOLEAN;
            case Types.DATE -> DATE;
            case Types.TIMESTAMP_WITH_TIMEZONE -> MOMENT;
            case Types.TIMESTAMP -> typeName.equalsIgnoreCase("timestamptz") ? MOMENT : LOCAL_MOMENT;
            case Types.BINARY, Types.VARBINARY, Types.LONGVARBINARY, Types.BLOB -> BYTES;
            default -> unknown(table, column, typeName);
        };
    }

    private static ColumnKind unknown(String table, String column, String typeName) {
        throw new IllegalStateException("The column " + table + "." + column + " is of type " + typeName + ", which a backup does not know");
    }
}
