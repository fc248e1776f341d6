package org.steadwork.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.agroal.api.AgroalDataSource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The start makes no table beside those of the migrations. */
@QuarkusTest
class NoHelperTablesTest {

    @Inject
    AgroalDataSource source;

    @Test
    void nothingButTheMigrationsMakesTables() throws Exception {
        List<String> helpers = new ArrayList<>();
        try (Connection db = source.getConnection(); Statement sql = db.createStatement();
                ResultSet rows = sql.executeQuery("select table_name from information_schema.tables where lower(table_name) like 'hte\\_%' escape '\\' or table_type like '%TEMPORARY%'")) {
            while (rows.next()) {
                helpers.add(rows.getString(1));
            }
        }
        assertEquals(List.of(), helpers);
    }
}
