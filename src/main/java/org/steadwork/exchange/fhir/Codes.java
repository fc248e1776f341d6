package org.steadwork.exchange.fhir;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Date;
import java.util.Map;
import org.hl7.fhir.r4.model.CodeableConcept;
import org.hl7.fhir.r4.model.DateTimeType;
import org.hl7.fhir.r4.model.InstantType;
import org.hl7.fhir.r4.model.Quantity;

/**
 * The codes that are written. Of LOINC only those that were looked up (pain 72514-3; the score of an instrument where its content names a
 * code); units are UCUM; HL7's own lists where FHIR itself demands one. Everything else goes as words, since a wrong code is worse than none.
 */
final class Codes {

    static final String LOINC = "http://loinc.org";
    static final String UCUM = "http://unitsofmeasure.org";
    static final String ABSENT = "http://terminology.hl7.org/CodeSystem/data-absent-reason";
    static final String ACT = "http://terminology.hl7.org/CodeSystem/v3-ActCode";
    static final String PAIN_NOW = "72514-3";
    private static final String PAIN_NOW_NAME = "Pain severity - 0-10 verbal numeric rating [Score] - Reported";
    /** How a unit is written here, and its UCUM code. Source: UCUM, curly braces for what has no unit. */
    private static final Map<String, String> UNITS = Map.of("", "{score}", "%", "%", "\u00b0", "deg", "kg", "kg", "mm", "mm", "cm", "cm", "regions", "{regions}",
            "h", "h", "h/wk", "h/wk");

    private Codes() {
    }

    static CodeableConcept words(String text) {
        return new CodeableConcept().setText(text);
    }

    static CodeableConcept painNow(String text) {
        CodeableConcept code = words(text);
        code.addCoding().setSystem(LOINC).setCode(PAIN_NOW).setDisplay(PAIN_NOW_NAME);
        return code;
    }

    /** @param loinc a code of LOINC, blank for none */
    static CodeableConcept score(String text, String loinc) {
        CodeableConcept code = words(text);
        if (!loinc.isBlank()) {
            code.addCoding().setSystem(LOINC).setCode(loinc);
        }
        return code;
    }

    /** @param unit one of those the clinic writes: %, \u00b0, kg, mm, cm, h, or nothing for points */
    static Quantity amount(BigDecimal value, String unit) {
        String ucum = UNITS.get(unit);
        if (ucum == null) {
            throw new IllegalArgumentException("No UCUM code is known for the unit '" + unit + "'");
        }
        return new Quantity().setValue(value).setUnit(unit.isEmpty() ? "score" : unit).setSystem(UCUM).setCode(ucum);
    }

    static Quantity amount(double value, String unit) {
        return amount(BigDecimal.valueOf(value), unit);
    }

    /** Says why there is no value: {@code asked-unknown}, {@code asked-declined}, {@code not-asked}, {@code not-performed}, {@code unknown}. */
    static CodeableConcept absent(String code, String words) {
        CodeableConcept why = words(words);
        why.addCoding().setSystem(ABSENT).setCode(code);
        return why;
    }

    /** Who receives information, as FHIR's list of parts in an act names it. */
    static CodeableConcept recipient() {
        CodeableConcept role = words("Reader");
        role.addCoding().setSystem("http://terminology.hl7.org/CodeSystem/v3-ParticipationType").setCode("IRCP").setDisplay("information recipient");
        return role;
    }

    /** Who wrote and signed something, as FHIR's list for Provenance names it. */
    static CodeableConcept author() {
        CodeableConcept type = words("Signed by");
        type.addCoding().setSystem("http://terminology.hl7.org/CodeSystem/provenance-participant-type").setCode("author").setDisplay("Author");
        return type;
    }

    /** A day without a time of day. */
    static DateTimeType day(LocalDate day) {
        return new DateTimeType(day.toString());
    }

    static DateTimeType moment(Instant at) {
        DateTimeType moment = new DateTimeType(Date.from(at));
        moment.setTimeZoneZulu(true);
        return moment;
    }

    static InstantType instant(Instant at) {
        InstantType instant = new InstantType(Date.from(at));
        instant.setTimeZoneZulu(true);
        return instant;
    }
}
