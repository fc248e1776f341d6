package org.steadwork.caseload;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Half a calendar year, fixed for everybody beforehand. A case belongs to the half-year of its first visit and to no other, so that two
 * reports never have a person in common by growing: one cannot be subtracted from the other.
 *
 * @param half 1 for January to June, 2 for July to December
 */
record ReportPeriod(int year, int half) {

    private static final Pattern KEY = Pattern.compile("(\\d{4})-h([12])");

    ReportPeriod {
        if (!(year >= 1900 && year <= 2199) || half != 1 && half != 2) {
            throw new IllegalArgumentException("There is no half-year " + year + "-h" + half);
        }
    }

    static Optional<ReportPeriod> of(String key) {
        Matcher matcher = KEY.matcher(key);
        if (!matcher.matches() || Integer.parseInt(matcher.group(1)) < 1900 || Integer.parseInt(matcher.group(1)) > 2199) {
            return Optional.empty();
        }
        return Optional.of(new ReportPeriod(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2))));
    }

    static ReportPeriod around(LocalDate day) {
        return new ReportPeriod(day.getYear(), day.getMonthValue() <= 6 ? 1 : 2);
    }

    /** Returns the half-years that are over, the latest first. */
    static List<ReportPeriod> endedBefore(LocalDate today, int most) {
        List<ReportPeriod> ended = new ArrayList<>();
        for (ReportPeriod period = around(today).before(); ended.size() < most; period = period.before()) {
            ended.add(period);
        }
        return ended;
    }

    ReportPeriod before() {
        return half == 2 ? new ReportPeriod(year, 1) : new ReportPeriod(year - 1, 2);
    }

    public String key() {
        return year + "-h" + half;
    }

    public String title() {
        return (half == 1 ? "January to June " : "July to December ") + year;
    }

    public LocalDate first() {
        return LocalDate.of(year, half == 1 ? 1 : 7, 1);
    }

    public LocalDate last() {
        return half == 1 ? LocalDate.of(year, 6, 30) : LocalDate.of(year, 12, 31);
    }

    boolean ended(LocalDate today) {
        return today.isAfter(last());
    }
}
