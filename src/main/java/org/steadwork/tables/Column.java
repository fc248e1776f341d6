package org.steadwork.tables;

import java.math.BigDecimal;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;

/** One column of a table. */
public record Column(String name, ColumnKind kind) {

    /** Reads a value as Long, BigDecimal, Double, String, Boolean, LocalDate, Instant, LocalDateTime or byte[]; null where there is none. */
    public Object read(ResultSet row, int place) throws SQLException {
        Object value = switch (kind) {
            case LONG -> row.getLong(place);
            case DECIMAL -> row.getBigDecimal(place);
            case DOUBLE -> row.getDouble(place);
            case TEXT -> row.getString(place);
            case BOOLEAN -> row.getBoolean(place);
            case DATE -> row.getObject(place, LocalDate.class);
            case MOMENT -> {
                OffsetDateTime moment = row.getObject(place, OffsetDateTime.class);
                yield moment == null ? null : moment.toInstant();
            }
            case LOCAL_MOMENT -> row.getObject(place, LocalDateTime.class);
            case BYTES -> row.getBytes(place);
        };
        return row.wasNull() ? null : value;
    }

    /** Puts a value as {@link #read} gives it into a statement. */
    public void write(PreparedStatement statement, int place, Object value) throws SQLException {
        if (value == null) {
            statement.setNull(place, kind.nullType());
            return;
        }
        switch (kind) {
            case LONG -> statement.setLong(place, (Long) value);
            case DECIMAL -> statement.setBigDecimal(place, (BigDecimal) value);
            case DOUBLE -> statement.setDouble(place, (Double) value);
            case TEXT -> statement.setString(place, (String) value);
            case BOOLEAN -> statement.setBoolean(place, (Boolean) value);
            case DATE, LOCAL_MOMENT -> statement.setObject(place, value);
            case MOMENT -> statement.setObject(place, ((Instant) value).atOffset(ZoneOffset.UTC));
            case BYTES -> statement.setBytes(place, (byte[]) value);
        }
    }
}
