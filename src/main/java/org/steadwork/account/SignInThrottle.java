package org.steadwork.account;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jboss.logging.Logger;
import org.steadwork.account.SignInDelay.Count;

/**
 * Slows guessing down without locking anybody out. Tries are counted for the name at one address, for the address, and for the name at all
 * addresses; after some free ones each wait doubles up to a bound. At an address where the account was signed in rightly before, only the
 * count for the name there holds, and its waits are short: so nobody elsewhere can shut a clinic out, and no colleague at the same address
 * either. A try is counted before the password is looked at, so that many at one moment gain nothing. The counts are stored and outlive a restart.
 */
@ApplicationScoped
class SignInThrottle {

    private static final Logger LOG = Logger.getLogger(SignInThrottle.class);
    private static final SignInDelay HERE_UNKNOWN = new SignInDelay(5, Duration.ofMinutes(15));
    private static final SignInDelay HERE_KNOWN = new SignInDelay(10, Duration.ofMinutes(1));
    private static final SignInDelay ADDRESS = new SignInDelay(20, Duration.ofMinutes(1));
    /** NIST SP 800-63B 5.2.2 allows no more than 100 wrong tries in a row on one account; after that they come slowly. */
    private static final SignInDelay ACCOUNT = new SignInDelay(100, Duration.ofSeconds(30));
    private static final Duration KEPT = Duration.ofDays(1);
    private static final Duration KNOWN_FOR = Duration.ofDays(90);
    private static final int MOST_COLLISIONS = 3;
    private static final int IPV6_NETWORK_BYTES = 8;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    /** Counts a try and returns zero when it may be made; else how long to wait, and the try is neither made nor counted. */
    Duration take(String userName, String address) {
        return counted(() -> taken(signingIn(plain(userName), network(address))));
    }

    /** As {@link #take}, for somebody signed in who is asked for the password again: only those who hold a session of theirs count. */
    Duration takeAgain(Account account) {
        return counted(() -> taken(List.of(again(account))));
    }

    private static Duration counted(Callable<Duration> taking) {
        for (int i = 1; i < MOST_COLLISIONS; i++) {
            try {
                return QuarkusTransaction.requiringNew().call(taking);
            } catch (RuntimeException e) {
                LOG.debugf("Two first tries at one moment: %s", e.getMessage()); // the second finds the row of the first
            }
        }
        return QuarkusTransaction.requiringNew().call(taking);
    }

    private List<Subject> signingIn(String name, String network) {
        boolean known = known(name, network, Instant.now(clock));
        return List.of(new Subject(subject("here", name, network), known ? HERE_KNOWN : HERE_UNKNOWN, true),
                new Subject(subject("address", "", network), ADDRESS, !known), new Subject(subject("account", name, ""), ACCOUNT, !known));
    }

    private static Subject again(Account account) {
        return new Subject(subject("again", account.userName(), ""), HERE_KNOWN, true);
    }

    private Duration taken(List<Subject> subjects) {
        Instant now = Instant.now(clock);
        Duration longest = Duration.ZERO;
        for (Subject subject : subjects) {
            Count count = count(subject.key());
            Duration wait = subject.holds() ? subject.delay().waiting(count, now) : Duration.ZERO;
            longest = wait.compareTo(longest) > 0 ? wait : longest;
        }
        if (longest.isZero()) {
            subjects.forEach(subject -> store(subject.key(), subject.delay().next(count(subject.key()), now)));
        }
        return longest;
    }

    private record Subject(String key, SignInDelay delay, boolean holds) {
    }

    /** Forgets the tries of somebody who gave the right password again. */
    void succeededAgain(Account account) {
        QuarkusTransaction.requiringNew().run(() -> db.createNativeQuery("delete from sign_in_tries where subject = ?1").setParameter(1, again(account).key()).executeUpdate());
    }

    /** Forgets the tries of somebody who signed in rightly, and knows them at this address from now on. */
    void succeeded(Account account, String address) {
        String network = network(address);
        Instant now = Instant.now(clock);
        db.createNativeQuery("delete from sign_in_tries where subject in (?1, ?2) or last_at < ?3").setParameter(1, subject("here", account.userName(), network))
                .setParameter(2, subject("account", account.userName(), "")).setParameter(3, Timestamp.from(now.minus(KEPT))).executeUpdate();
        db.createNativeQuery("update sign_in_tries set tries = tries - 1, next_at = null where subject = ?1 and tries > 0")
                .setParameter(1, subject("address", "", network)).executeUpdate();
        int there = db.createNativeQuery("update known_address set last_at = ?3 where account_id = ?1 and address = ?2").setParameter(1, account.id())
                .setParameter(2, network).setParameter(3, Timestamp.from(now)).executeUpdate();
        if (there == 0) {
            db.createNativeQuery("insert into known_address (account_id, address, last_at) values (?1, ?2, ?3)").setParameter(1, account.id())
                    .setParameter(2, network).setParameter(3, Timestamp.from(now)).executeUpdate();
        }
    }

    private boolean known(String name, String network, Instant now) {
        return ((Number) db.createNativeQuery("select count(*) from known_address k join account a on a.id = k.account_id"
                + " where a.user_name = ?1 and k.address = ?2 and k.last_at > ?3").setParameter(1, name).setParameter(2, network)
                .setParameter(3, Timestamp.from(now.minus(KNOWN_FOR))).getSingleResult()).longValue() > 0;
    }

    private Count count(String subject) {
        List<?> rows = db.createNativeQuery("select tries, last_at, next_at from sign_in_tries where subject = ?1 for update")
                .setParameter(1, subject).getResultList();
        if (rows.isEmpty()) {
            return Count.NONE;
        }
        Object[] row = (Object[]) rows.get(0);
        return new Count(((Number) row[0]).intValue(), instant(row[1]), instant(row[2]));
    }

    private void store(String subject, Count count) {
        Timestamp next = count.nextAt() == null ? null : Timestamp.from(count.nextAt());
        int there = db.createNativeQuery("update sign_in_tries set tries = ?2, last_at = ?3, next_at = cast(?4 as timestamp with time zone) where subject = ?1")
                .setParameter(1, subject).setParameter(2, count.tries()).setParameter(3, Timestamp.from(count.lastAt())).setParameter(4, next).executeUpdate();
        if (there == 0) {
            db.createNativeQuery("insert into sign_in_tries (subject, tries, last_at, next_at) values (?1, ?2, ?3, cast(?4 as timestamp with time zone))")
                    .setParameter(1, subject).setParameter(2, count.tries()).setParameter(3, Timestamp.from(count.lastAt())).setParameter(4, next).executeUpdate();
        }
    }

    private static Instant instant(Object value) {
        return value == null ? null : value instanceof Instant moment ? moment : value instanceof OffsetDateTime moment ? moment.toInstant()
                : ((Timestamp) value).toInstant();
    }

    /** Names are hashed: people type their passwords into this field by mistake. */
    private static String subject(String kind, String name, String network) {
        return OpaqueToken.hash(kind + "|" + name + "|" + network);
    }

    private static String plain(String userName) {
        return userName.strip().toLowerCase(Locale.ROOT);
    }

    /** Returns what one sender can easily choose among as one: an IPv4 address, or the /64 network of an IPv6 address. */
    static String network(String address) {
        if (address == null || !address.contains(":") || !address.matches("[0-9a-fA-F:.%\\w]+")) {
            return address == null ? "none" : address;
        }
        try {
            byte[] bytes = InetAddress.getByName(address.replaceAll("%.*", "")).getAddress();
            if (bytes.length == 4) {
                return InetAddress.getByAddress(bytes).getHostAddress();
            }
            Arrays.fill(bytes, IPV6_NETWORK_BYTES, bytes.length, (byte) 0);
            return InetAddress.getByAddress(bytes).getHostAddress() + "/64";
        } catch (UnknownHostException e) {
            return address;
        }
    }
}
