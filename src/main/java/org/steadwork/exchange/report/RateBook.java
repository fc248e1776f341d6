package org.steadwork.exchange.report;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/** Counts the requests of each token in the running minute, for all nodes on the database together. */
@ApplicationScoped
class RateBook {

    static final int MOST_A_MINUTE = 60;
    private static final Duration MINUTE = Duration.ofMinutes(1);

    @Inject
    Clock clock;

    @Inject
    EntityManager db;

    /** Notes a request; returns the seconds to wait when there were too many, else 0. */
    long secondsToWait(long tokenId) {
        Instant now = Instant.now(clock);
        Instant earliest = now.minus(MINUTE);
        return QuarkusTransaction.requiringNew().call(() -> {
            db.createNativeQuery("update report_token set counted = case when counted_from > ?2 then counted + 1 else 1 end,"
                    + " counted_from = case when counted_from > ?2 then counted_from else ?3 end where id = ?1").setParameter(1, tokenId)
                    .setParameter(2, Timestamp.from(earliest)).setParameter(3, Timestamp.from(now)).executeUpdate();
            int requests = of(tokenId, "counted", Integer.class);
            return requests <= MOST_A_MINUTE ? 0 : Math.max(1, Duration.between(now, of(tokenId, "counted_from", Instant.class).plus(MINUTE)).toSeconds());
        });
    }

    private <T> T of(long tokenId, String column, Class<T> kind) {
        return kind.cast(db.createNativeQuery("select " + column + " from report_token where id = ?1", kind).setParameter(1, tokenId).getSingleResult());
    }
}
