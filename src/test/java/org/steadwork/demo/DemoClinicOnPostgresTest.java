package org.steadwork.demo;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@QuarkusTest
@Tag("own-clinic")
@TestProfile(OnPostgres.class)
class DemoClinicOnPostgresTest extends DemoClinicContract {

    @Inject
    DataSource source;

    @Test
    void theDatabaseIsPostgresIndeed() throws SQLException {
        try (Connection connection = source.getConnection()) {
            assertTrue(connection.getMetaData().getDatabaseProductName().equals("PostgreSQL"));
        }
    }
}
