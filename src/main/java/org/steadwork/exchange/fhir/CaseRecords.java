package org.steadwork.exchange.fhir;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Comparator;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.casefile.VisitNotes;
import org.steadwork.casefile.Visits;
import org.steadwork.casefile.WorkPlans;
import org.steadwork.casefile.WorkStatuses;
import org.steadwork.exercise.Prescriptions;
import org.steadwork.letter.CaseCorrespondence;
import org.steadwork.outcome.Goals;
import org.steadwork.outcome.OwnActivityRatings;
import org.steadwork.outcome.PhysicalMeasurements;
import org.steadwork.outcome.Scores;
import org.steadwork.redflag.Flags;
import org.steadwork.redflag.ScreenRecords;
import org.steadwork.workplace.MeasuredBody;

/** Reads the record of a case in a fixed number of queries. */
@ApplicationScoped
public class CaseRecords {

    @Inject
    Visits visits;

    @Inject
    VisitNotes notes;

    @Inject
    WorkStatuses statuses;

    @Inject
    WorkPlans plans;

    @Inject
    SymptomReports reports;

    @Inject
    Scores scores;

    @Inject
    OwnActivityRatings activities;

    @Inject
    Goals goals;

    @Inject
    PhysicalMeasurements physical;

    @Inject
    MeasuredBody body;

    @Inject
    ScreenRecords screens;

    @Inject
    Flags flags;

    @Inject
    Prescriptions prescriptions;

    @Inject
    CaseCorrespondence letters;

    /** @param file with its people, as {@link org.steadwork.casefile.CaseFiles#withPeople} gives it */
    public CaseRecord of(CaseFile file) {
        long id = file.id();
        List<SymptomReport> reported = reports.of(id).stream().sorted(Comparator.comparing(SymptomReport::reportedOn)).toList();
        return new CaseRecord(file, visits.of(id), notes.ofCase(id), notes.addendaOfCase(id), statuses.of(id).spells(), plans.of(id), reported, scores.of(id),
                activities.ratings(id), goals.of(id), physical.grips(id), physical.motions(id), body.of(id), screens.of(id), flags.of(id),
                prescriptions.of(id), letters.consents(id), letters.signed(id));
    }
}
