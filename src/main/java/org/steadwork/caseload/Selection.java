package org.steadwork.caseload;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.body.BodyRegion;

/**
 * Which cases are looked at.
 *
 * @param from first day of the first visit; {@code to} the last one
 * @param clinicianId null for all, and so the employer
 * @param regions main regions, empty for all; {@code unreported} asks for cases without one instead
 * @param complaint a part of the complaint's words, null for any
 */
record Selection(LocalDate from, LocalDate to, Long clinicianId, Long employerId, Set<BodyRegion> regions, boolean unreported, String complaint) {

    Selection {
        regions = Set.copyOf(regions);
    }

    static Selection ofEmployer(long employerId, LocalDate from, LocalDate to) {
        return new Selection(from, to, null, employerId, Set.of(), false, null);
    }

    /** Reads the chosen rows, in the order of their numbers. */
    List<CaseOutcome> read(CaseOutcomes outcomes) {
        List<Object> values = new ArrayList<>();
        String where = where(values);
        return outcomes.read("select " + OutcomeRows.COLUMNS + " from case_outcome" + where + " order by case_file_id", values);
    }

    /** Returns the condition on {@code case_outcome} and adds its values. */
    String where(List<Object> values) {
        StringBuilder where = new StringBuilder(" where opened_on >= ? and opened_on <= ?");
        values.add(from);
        values.add(to);
        if (clinicianId != null) {
            where.append(" and clinician_id = ?");
            values.add(clinicianId);
        }
        if (employerId != null) {
            where.append(" and employer_id = ?");
            values.add(employerId);
        }
        if (unreported) {
            where.append(" and region is null");
        } else if (!regions.isEmpty()) {
            where.append(regions.stream().map(region -> "'" + region.name() + "'").sorted().collect(Collectors.joining(", ", " and region in (", ")")));
        }
        if (complaint != null) {
            where.append(" and case_file_id in (select id from case_file where lower(complaint) like ? escape '!')");
            values.add("%" + complaint.toLowerCase(Locale.ROOT).replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%");
        }
        return where.toString();
    }
}
