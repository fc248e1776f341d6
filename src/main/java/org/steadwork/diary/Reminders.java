package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.web.Dates;

/** The visits of the next days to remind patients of: a list to print or export. Nothing is sent from here, and nothing clinical is on it. */
@ApplicationScoped
class Reminders {

    private static final int LOOKED_AHEAD_DAYS = 40;
    /** What a spreadsheet would take for a formula; such a cell gets an apostrophe before it. Source: OWASP, CSV injection. */
    private static final Pattern FORMULA = Pattern.compile("(?s)^[=+\\-@\\t\\r\\n].*");

    @Inject
    Availability availability;

    @Inject
    DiaryContent content;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.clinic.name")
    Optional<String> clinicName;

    @ConfigProperty(name = "steadwork.clinic.address")
    Optional<String> clinicAddress;

    /** The list; {@code until} is the moment up to which visits are on it. */
    record Listed(Instant until, int hours, List<Appointment> appointments) {

        public long exported() {
            return appointments.stream().filter(one -> one.exportedAt() != null).count();
        }
    }

    Listed due() {
        Instant now = Instant.now(clock);
        LocalDate today = now.atZone(clock.getZone()).toLocalDate();
        Openings openings = availability.between(today, today.plusDays(LOOKED_AHEAD_DAYS));
        Instant until = ClinicTime.remindUntil(now, content.reminderHours(), day -> !day.isAfter(openings.last()) && openings.closed(day), clock.getZone());
        return new Listed(until, content.reminderHours(), openings.appointments().stream().filter(Appointment::toCome).filter(one -> {
            Instant start = ClinicTime.at(one.day(), one.start(), clock.getZone());
            return start.isAfter(now) && !start.isAfter(until);
        }).toList());
    }

    /** Writes the list as CSV and notes on each appointment that it was exported. */
    @Transactional
    String export() {
        List<Appointment> due = due().appointments();
        StringWriter text = new StringWriter();
        try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
            csv.printRecord("Name", "Telephone", "E-mail", "Date", "Time", "Place");
            for (Appointment one : due) {
                csv.printRecord(harmless(one.patient().name()), harmless(one.patient().phone()), harmless(one.patient().email()), Dates.shown(one.day()).replace('\u00a0', ' '),
                        one.from(), harmless(place(one)));
                one.exported(account.displayName(), Instant.now(clock));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        audit.record("exported reminders", null, null, due.size() + " visits");
        return text.toString();
    }

    /** Where to come: the clinic; of a visit without a room only that it is by appointment elsewhere. */
    private String place(Appointment one) {
        return switch (one.kind()) {
            case PHONE -> "By telephone";
            case WORK_PLACE -> "At your work place";
            default -> clinicName.orElse("At the clinic") + clinicAddress.map(address -> ", " + address.replaceAll("\\s*;\\s*", ", ")).orElse("")
                    + (one.room() == null ? "" : ", " + one.room().name());
        };
    }

    static String harmless(String cell) {
        return cell == null ? "" : FORMULA.matcher(cell).matches() ? "'" + cell : cell;
    }
}
