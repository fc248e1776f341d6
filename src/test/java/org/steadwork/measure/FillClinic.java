package org.steadwork.measure;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;

/**
 * Fills the database of a clinic that is not running, for looking at its pages and measuring them: JDBC address, number of cases, seed, last
 * day. Start the application once before, so that the tables are there, and with the word {@code sum-up} afterwards.
 */
public final class FillClinic {

    private FillClinic() {
    }

    public static void main(String... words) throws SQLException {
        if (words.length != 4) {
            System.err.println("FillClinic takes a JDBC address, the number of cases, a seed and the last day, for example jdbc:h2:file:./data/clinic 10000 42 2026-11-01");
            System.exit(2);
        }
        long began = System.nanoTime();
        try (Connection db = DriverManager.getConnection(words[0])) {
            System.out.println(new InventedClinic(db, Long.parseLong(words[2]), LocalDate.parse(words[3])).fill(Integer.parseInt(words[1])));
        }
        System.out.printf("%.1f s%n", (System.nanoTime() - began) / 1e9);
    }
}
