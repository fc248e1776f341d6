package org.steadwork.exchange.report;

import java.time.LocalDate;
import java.util.List;

/**
 * One case without anything that names the person. Names of the members are those of the JSON.
 *
 * @param ageBand in years at the opening of the case
 * @param regions keys of the body regions ever reported in it
 */
record ReportRow(String caseKey, String patientKey, String ageBand, String sex, List<String> regions, LocalDate openedOn, LocalDate closedOn, String closeReason,
        int visitsAttended, List<ReportScore> scores) {

    /** A score; the value is null when too little was answered. */
    record ReportScore(String instrument, String version, LocalDate on, Double value, String unit, boolean estimated) {
    }

    /** Ten years wide, and open at both ends, where people are few. Common practice, no source. */
    static String ageBand(int years) {
        if (years < 20) {
            return "under 20";
        }
        return years >= 60 ? "60 and over" : years / 10 * 10 + " to " + (years / 10 * 10 + 9);
    }
}
