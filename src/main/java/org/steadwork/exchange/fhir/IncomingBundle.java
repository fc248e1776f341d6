package org.steadwork.exchange.fhir;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hl7.fhir.instance.model.api.IBaseResource;
import org.hl7.fhir.r4.model.BaseDateTimeType;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.CodeableConcept;
import org.hl7.fhir.r4.model.ContactPoint;
import org.hl7.fhir.r4.model.DateTimeType;
import org.hl7.fhir.r4.model.Enumerations.AdministrativeGender;
import org.hl7.fhir.r4.model.HumanName;
import org.hl7.fhir.r4.model.InstantType;
import org.hl7.fhir.r4.model.IntegerType;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.Patient;
import org.hl7.fhir.r4.model.Period;
import org.hl7.fhir.r4.model.Quantity;
import org.hl7.fhir.r4.model.Resource;

/** What is taken from a bundle made elsewhere: one patient and the ratings of pain. Everything else in it is counted and left. */
final class IncomingBundle {

    /** LOINC 72514-3, the verbal rating 0 to 10, and the older general 38208-5. */
    private static final Set<String> PAIN = Set.of(Codes.PAIN_NOW, "38208-5");
    private static final Set<Observation.ObservationStatus> NOT_TO_BE_USED = Set.of(Observation.ObservationStatus.ENTEREDINERROR, Observation.ObservationStatus.CANCELLED);
    private static final int LONGEST_PLACE = 80;

    /**
     * A person as the bundle names them; null for what it does not say.
     *
     * @param birthDate null too when only the year or month is given, since a day would be a guess
     */
    record Person(String givenName, String familyName, LocalDate birthDate, String sex, String phone, String email, String address) {
    }

    /**
     * A rating of pain.
     *
     * @param pain whole number in [0, 10]
     * @param place the body site in the sender's words, or null
     */
    record Rating(LocalDate on, int pain, String place) {
    }

    private final Person person;
    private final List<Rating> ratings = new ArrayList<>();
    private final List<String> left = new ArrayList<>();

    /** @throws UnreadableResource with words for people when there is not exactly one patient */
    IncomingBundle(IBaseResource resource, ZoneId zone) {
        List<Resource> all = new ArrayList<>();
        if (resource instanceof Bundle bundle) {
            bundle.getEntry().stream().map(Bundle.BundleEntryComponent::getResource).filter(Objects::nonNull).forEach(all::add);
        } else if (resource instanceof Resource one) {
            all.add(one);
        }
        List<Patient> patients = all.stream().filter(Patient.class::isInstance).map(Patient.class::cast).toList();
        if (patients.size() != 1) {
            throw new UnreadableResource(patients.isEmpty() ? "There is no Patient in the file." : "There are " + patients.size()
                    + " patients in the file. Send one at a time, so that nothing goes to the wrong person.");
        }
        person = person(patients.get(0));
        long others = all.stream().filter(one -> !(one instanceof Patient || one instanceof Observation)).count();
        all.stream().filter(Observation.class::isInstance).map(Observation.class::cast).forEach(one -> rating(one, zone));
        if (others > 0) {
            left.add(others + (others == 1 ? " other resource" : " other resources"));
        }
    }

    Person person() {
        return person;
    }

    List<Rating> ratings() {
        return ratings;
    }

    /** Says in words what is in the file and is not taken, each kind once with how often it stands in the file. */
    List<String> left() {
        Map<String, Long> kinds = left.stream().collect(Collectors.groupingBy(Function.identity(), LinkedHashMap::new, Collectors.counting()));
        return kinds.entrySet().stream().map(kind -> kind.getKey() + (kind.getValue() == 1 ? "" : ", " + kind.getValue() + " times")).toList();
    }

    private static Person person(Patient patient) {
        HumanName name = patient.getName().stream().filter(one -> one.getUse() == HumanName.NameUse.OFFICIAL).findFirst().orElse(patient.getNameFirstRep());
        String given = String.join(" ", name.getGiven().stream().map(one -> one.getValue() == null ? "" : one.getValue()).toList()).strip();
        boolean whole = patient.getBirthDate() != null && patient.getBirthDateElement().getValueAsString().length() == "2000-01-01".length();
        return new Person(given.isEmpty() ? null : given, name.getFamily(), whole ? LocalDate.parse(patient.getBirthDateElement().getValueAsString()) : null,
                patient.getGender() == AdministrativeGender.FEMALE ? "female" : patient.getGender() == AdministrativeGender.MALE ? "male" : "not_recorded",
                telecom(patient, ContactPoint.ContactPointSystem.PHONE), telecom(patient, ContactPoint.ContactPointSystem.EMAIL), address(patient));
    }

    private static String telecom(Patient patient, ContactPoint.ContactPointSystem system) {
        return patient.getTelecom().stream().filter(one -> one.getSystem() == system && one.getUse() != ContactPoint.ContactPointUse.OLD && one.hasValue()).findFirst()
                .map(ContactPoint::getValue).orElse(null);
    }

    private static String address(Patient patient) {
        return patient.getAddress().stream().findFirst().map(one -> {
            if (one.hasText()) {
                return one.getText();
            }
            List<String> lines = new ArrayList<>();
            one.getLine().forEach(line -> lines.add(line.getValue()));
            lines.add(one.getPostalCode());
            lines.add(one.getCity());
            lines.add(one.getCountry());
            lines.removeIf(line -> line == null || line.isBlank());
            return lines.isEmpty() ? null : String.join("\n", lines);
        }).orElse(null);
    }

    private void rating(Observation observation, ZoneId zone) {
        if (!pain(observation.getCode())) {
            left.add("an observation of " + words(observation.getCode()));
        } else if (NOT_TO_BE_USED.contains(observation.getStatus())) {
            left.add("a rating of pain that its sender took back");
        } else {
            LocalDate on = day(observation, zone);
            Integer pain = value(observation);
            if (on == null || pain == null) {
                left.add("a rating of pain without " + (on == null ? "a day" : "a whole number from 0 to 10"));
            } else {
                ratings.add(new Rating(on, pain, place(observation.getBodySite())));
            }
        }
    }

    private static boolean pain(CodeableConcept code) {
        return code.getCoding().stream().anyMatch(coding -> Codes.LOINC.equals(coding.getSystem()) && PAIN.contains(coding.getCode()));
    }

    private static String words(CodeableConcept code) {
        String text = code.hasText() ? code.getText() : code.getCoding().stream().map(coding -> coding.hasDisplay() ? coding.getDisplay() : coding.getCode())
                .filter(Objects::nonNull).findFirst().orElse("something not named");
        return text.length() > LONGEST_PLACE ? text.substring(0, LONGEST_PLACE) + "\u2026" : text;
    }

    private static String place(CodeableConcept site) {
        return site.isEmpty() ? null : words(site);
    }

    private static Integer value(Observation observation) {
        BigDecimal value = observation.getValue() instanceof Quantity quantity ? quantity.getValue()
                : observation.getValue() instanceof IntegerType integer && integer.getValue() != null ? BigDecimal.valueOf(integer.getValue()) : null;
        boolean comparator = observation.getValue() instanceof Quantity quantity && quantity.hasComparator();
        if (value == null || comparator || value.stripTrailingZeros().scale() > 0 || value.signum() < 0 || value.compareTo(BigDecimal.TEN) > 0) {
            return null;
        }
        return value.intValueExact();
    }

    /** The day where the clinic is; a moment carries its own offset, a bare day none. */
    private static LocalDate day(Observation observation, ZoneId zone) {
        BaseDateTimeType when = observation.getEffective() instanceof DateTimeType moment ? moment : observation.getEffective() instanceof InstantType instant ? instant
                : observation.getEffective() instanceof Period period ? period.getStartElement() : null;
        if (when == null || when.getValueAsString() == null || when.getValueAsString().length() < "2000-01-01".length()) {
            return null;
        }
        return when.getValueAsString().length() == "2000-01-01".length() ? LocalDate.parse(when.getValueAsString()) : when.getValue().toInstant().atZone(zone).toLocalDate();
    }
}
