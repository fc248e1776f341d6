package org.steadwork.caseload;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.steadwork.account.Role;
import org.steadwork.body.BodyRegion;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** Reads from an address which cases are asked for, and offers what can be chosen. */
@ApplicationScoped
class SelectionForm {

    private static final String UNREPORTED = "not_reported";

    @Inject
    EntityManager db;

    @Inject
    Definitions definitions;

    @Inject
    Clock clock;

    /** What can be chosen. */
    record Offers(List<Option> clinicians, List<Option> employers, List<Option> regions) {

        /** Returns the groups that can be compared. */
        public List<Option> groups() {
            List<Option> groups = new ArrayList<>();
            regions.stream().filter(option -> !option.value().equals(UNREPORTED))
                    .forEach(option -> groups.add(new Option("region-" + option.value(), option.label())));
            groups.add(new Option("looked_at-yes", "Work place looked at"));
            groups.add(new Option("looked_at-no", "Work place not looked at"));
            employers.forEach(option -> groups.add(new Option("employer-" + option.value(), option.label())));
            return groups;
        }
    }

    /** Returns all who may hold cases, employers with patients, and the regions. Two queries. */
    Offers offers() {
        List<Option> clinicians = db.createQuery("select a.id, a.displayName from Account a where a.role in ?1 order by a.displayName, a.id", Object[].class)
                .setParameter(1, List.of(Role.CLINICIAN, Role.LEAD)).getResultStream().map(row -> new Option(row[0].toString(), row[1].toString())).toList();
        List<Option> employers = db.createQuery("select e.id, e.name from Employer e where exists (select 1 from Patient p where p.employer = e) order by e.name, e.id",
                Object[].class).getResultStream().map(row -> new Option(row[0].toString(), row[1].toString())).toList();
        List<Option> regions = new ArrayList<>();
        definitions.groups().forEach(group -> regions.add(new Option(group.key(), group.title())));
        Arrays.stream(BodyRegion.values()).forEach(region -> regions.add(new Option(region.key(), region.label())));
        regions.add(new Option(UNREPORTED, "Not reported"));
        return new Offers(clinicians, employers, regions);
    }

    /** Puts the last twelve months in where no period was asked for. */
    Form withDefaults(Form form) {
        LocalDate today = LocalDate.now(clock);
        if (!form.fields().contains("from") && !form.fields().contains("to")) {
            form.with("from", Dates.shown(today.minusYears(1).plusDays(1))).with("to", Dates.shown(today));
        }
        return form;
    }

    /** Reads the form; empty when something in it is wrong, which is noted at the field. */
    Optional<Selection> read(Form form, Offers offers) {
        LocalDate from = form.requiredDate("from", "First visit from");
        LocalDate to = form.requiredDate("to", "First visit to");
        if (from != null && to != null && from.isAfter(to)) {
            form.error("to", "The period ends before it begins. You entered " + Dates.shown(from) + " to " + Dates.shown(to) + ".");
        }
        Long clinician = offered(form, "clinician", "Clinician", offers.clinicians());
        Long employer = offered(form, "employer", "Employer", offers.employers());
        String complaint = form.text("complaint", 100);
        String key = form.value("region").strip();
        Set<BodyRegion> regions = key.isEmpty() || key.equals(UNREPORTED) ? Set.of() : regions(key);
        if (!key.isEmpty() && !key.equals(UNREPORTED) && regions.isEmpty()) {
            form.error("region", "Region: choose one of those offered.");
        }
        return form.hasErrors() ? Optional.empty() : Optional.of(new Selection(from, to, clinician, employer, regions, key.equals(UNREPORTED), complaint));
    }

    /** Returns the regions of a region's or a group's key, none for any other word. */
    Set<BodyRegion> regions(String key) {
        return definitions.group(key).map(Definitions.RegionGroup::regions).orElseGet(() -> {
            Set<BodyRegion> one = EnumSet.noneOf(BodyRegion.class);
            Arrays.stream(BodyRegion.values()).filter(region -> region.key().equals(key)).forEach(one::add);
            return one;
        });
    }

    private static Long offered(Form form, String field, String label, List<Option> options) {
        String value = form.value(field).strip();
        if (value.isEmpty()) {
            return null;
        }
        if (options.stream().noneMatch(option -> option.value().equals(value))) {
            form.error(field, label + ": choose one of those offered.");
            return null;
        }
        return Long.valueOf(value);
    }

    /** Says in words what was chosen, for the head of a file. */
    static String words(Form form, Offers offers) {
        List<String> words = new ArrayList<>(List.of("First visit " + form.value("from") + " to " + form.value("to")));
        label(offers.clinicians(), form.value("clinician")).ifPresent(name -> words.add("clinician " + name));
        label(offers.employers(), form.value("employer")).ifPresent(name -> words.add("employer " + name));
        label(offers.regions(), form.value("region")).ifPresent(name -> words.add("region " + name));
        if (form.has("complaint")) {
            words.add("complaint with “" + form.value("complaint").strip() + "”");
        }
        return String.join("; ", words);
    }

    static Optional<String> label(List<Option> options, String value) {
        return options.stream().filter(option -> option.value().equals(value)).map(Option::label).findFirst();
    }
}
