package org.steadwork.oversight;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/** Which entries of the audit trail are asked for: of whom, about whom, what and when. What cannot be read is said at its field and left out. */
public final class AuditFilter {

    private static final int LONGEST = 60;

    private final Form form = Form.empty();
    private final List<String> where = new ArrayList<>();
    private final Map<String, Object> values = new LinkedHashMap<>();

    /** @param days dates as people type them; {@code person} the number of an account; {@code patient} a file number or part of a name */
    AuditFilter(String person, String patient, String action, String from, String until, ZoneId zone) {
        form.with("person", text(person)).with("patient", text(patient)).with("action", text(action)).with("from", text(from)).with("until", text(until));
        if (form.value("person").matches("\\d{1,18}")) {
            and("e.accountId = :person", "person", Long.valueOf(form.value("person")));
        }
        if (form.has("patient")) {
            and("(upper(p.fileNumber) = :patient or upper(p.givenName || ' ' || p.familyName) like :patientLike escape '!')", "patient",
                    form.value("patient").strip().toUpperCase());
            values.put("patientLike", "%" + escaped(form.value("patient").strip().toUpperCase()) + "%");
        }
        if (form.has("action")) {
            and("lower(e.action) like :action escape '!'", "action", "%" + escaped(form.value("action").strip().toLowerCase()) + "%");
        }
        day("from", "From", "e.happenedAt >= :from", 0, zone);
        day("until", "Until", "e.happenedAt < :until", 1, zone);
    }

    public Form form() {
        return form;
    }

    /** Returns the condition with a leading {@code where}, or nothing. */
    String condition() {
        return where.isEmpty() ? "" : " where " + String.join(" and ", where);
    }

    Map<String, Object> values() {
        return values;
    }

    /** Returns the filter as it stands in an address, without the question mark. */
    public String query() {
        return List.of("person", "patient", "action", "from", "until").stream().filter(form::has)
                .map(name -> name + "=" + URLEncoder.encode(form.value(name), StandardCharsets.UTF_8)).collect(Collectors.joining("&"));
    }

    private void day(String field, String label, String condition, int daysOn, ZoneId zone) {
        if (!form.has(field)) {
            return;
        }
        try {
            LocalDate day = Dates.parse(form.value(field));
            and(condition, field, day.plusDays(daysOn).atStartOfDay(zone).toInstant());
        } catch (DateTimeException e) {
            form.error(field, label + " must be a date, for example 4 Mar 2030.");
        }
    }

    private void and(String condition, String name, Object value) {
        where.add(condition);
        values.put(name, value);
    }

    private static String text(String given) {
        String plain = given == null ? "" : given.codePoints().filter(c -> !Character.isISOControl(c)).collect(StringBuilder::new,
                StringBuilder::appendCodePoint, StringBuilder::append).toString();
        return plain.length() > LONGEST ? plain.substring(0, LONGEST) : plain;
    }

    private static String escaped(String text) {
        return text.replaceAll("([!%_])", "!$1");
    }
}
