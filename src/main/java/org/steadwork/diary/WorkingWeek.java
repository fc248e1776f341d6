package org.steadwork.diary;

import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import org.steadwork.account.Account;
import org.steadwork.diary.rules.Span;
import org.steadwork.kernel.StaleVersionException;

/** The usual week of a clinician: at which times of each weekday visits can be booked. A weekday that is not there is free of work. */
@Entity
@Table(name = "working_week")
class WorkingWeek {

    @Id
    @GeneratedValue(generator = "working_week_seq")
    @SequenceGenerator(name = "working_week_seq", sequenceName = "working_week_seq", allocationSize = 1)
    private Long id;

    @Version
    private int version;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "account_id")
    private Account account;

    @Convert(converter = WeekColumn.class)
    private Map<DayOfWeek, List<Span>> spans;

    protected WorkingWeek() {
    }

    WorkingWeek(Account account, Map<DayOfWeek, List<Span>> spans) {
        this.account = account;
        work(spans);
    }

    void work(Map<DayOfWeek, List<Span>> spans) {
        this.spans = Map.copyOf(spans);
    }

    void requireVersion(int seen) {
        StaleVersionException.check(seen, version);
    }

    int version() {
        return version;
    }

    Account account() {
        return account;
    }

    Map<DayOfWeek, List<Span>> spans() {
        return spans;
    }
}
