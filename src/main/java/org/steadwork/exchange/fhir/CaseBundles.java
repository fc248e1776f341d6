package org.steadwork.exchange.fhir;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.hl7.fhir.r4.model.Bundle;
import org.steadwork.body.BodyChart;
import org.steadwork.exchange.ClinicMarks;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.outcome.Instruments;

/** Makes of a case's record a collection bundle of FHIR R4 with what one reader may have. Source: HL7 FHIR R4 (4.0.1). */
@ApplicationScoped
public class CaseBundles {

    @Inject
    ClinicMarks marks;

    @Inject
    BodyChart chart;

    @Inject
    Instruments instruments;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.clinic.name")
    Optional<String> clinicName;

    @ConfigProperty(name = "steadwork.demo")
    boolean demo;

    public Bundle of(CaseRecord record, Portion portion) {
        BundleDraft draft = new BundleDraft(marks.mark(), demo, "case " + record.file().id() + " for " + portion.readerKey(), Instant.now(clock));
        new PeopleResources(draft, portion, clinicName.orElse("Occupational physiotherapy")).add(record);
        Subject about = new Subject(draft, portion, record.file());
        SignatureResources signatures = new SignatureResources(about);
        new CareResources(about).add(record, signatures);
        new SymptomResources(about, chart).add(record);
        new ScoreResources(about, instruments).add(record);
        new RedFlagResources(about).add(record, signatures);
        new PlanResources(about, catalogue).add(record);
        new LetterResources(about).add(record, signatures);
        new ConsentResources(about, portion.matrix()).add(record);
        return draft.bundle();
    }
}
