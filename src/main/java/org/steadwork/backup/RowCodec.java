package org.steadwork.backup;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.steadwork.tables.Column;

/** A row as bytes, the same whichever database it came from: for each value a 0 when there is none, else a 1 and the value. */
final class RowCodec {

    private static final int MOST_BYTES = 256 * 1024 * 1024;

    private RowCodec() {
    }

    static byte[] encode(ResultSet row, List<Column> columns) throws SQLException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(256);
        DataOutputStream out = new DataOutputStream(bytes);
        try {
            for (int i = 0; i < columns.size(); i++) {
                encode(columns.get(i), columns.get(i).read(row, i + 1), out);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void encode(Column column, Object value, DataOutputStream out) throws IOException {
        out.writeBoolean(value != null);
        if (value == null) {
            return;
        }
        switch (column.kind()) {
            case LONG -> out.writeLong((Long) value);
            case DOUBLE -> out.writeDouble((Double) value);
            case BOOLEAN -> out.writeBoolean((Boolean) value);
            case DATE -> out.writeLong(((LocalDate) value).toEpochDay());
            case MOMENT -> {
                out.writeLong(((Instant) value).getEpochSecond());
                out.writeInt(((Instant) value).getNano());
            }
            case LOCAL_MOMENT -> {
                out.writeLong(((LocalDateTime) value).toEpochSecond(ZoneOffset.UTC));
                out.writeInt(((LocalDateTime) value).getNano());
            }
            case DECIMAL -> bytes(((BigDecimal) value).toString().getBytes(StandardCharsets.US_ASCII), out);
            case TEXT -> bytes(((String) value).getBytes(StandardCharsets.UTF_8), out);
            case BYTES -> bytes((byte[]) value, out);
        }
    }

    private static void bytes(byte[] value, DataOutputStream out) throws IOException {
        out.writeInt(value.length);
        out.write(value);
    }

    /** Reads the values of one row, as {@link Column#read} gives them. */
    static Object[] decode(DataInputStream in, List<Column> columns) throws IOException {
        Object[] values = new Object[columns.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = in.readBoolean() ? value(columns.get(i), in) : null;
        }
        return values;
    }

    private static Object value(Column column, DataInputStream in) throws IOException {
        return switch (column.kind()) {
            case LONG -> in.readLong();
            case DOUBLE -> in.readDouble();
            case BOOLEAN -> in.readBoolean();
            case DATE -> LocalDate.ofEpochDay(in.readLong());
            case MOMENT -> Instant.ofEpochSecond(in.readLong(), in.readInt());
            case LOCAL_MOMENT -> LocalDateTime.ofEpochSecond(in.readLong(), in.readInt(), ZoneOffset.UTC);
            case DECIMAL -> new BigDecimal(new String(bytes(in), StandardCharsets.US_ASCII));
            case TEXT -> new String(bytes(in), StandardCharsets.UTF_8);
            case BYTES -> bytes(in);
        };
    }

    private static byte[] bytes(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > MOST_BYTES) {
            throw new IOException("a value of " + length + " bytes");
        }
        return in.readNBytes(length);
    }
}
