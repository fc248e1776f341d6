package org.steadwork.exchange;

import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.body.BodyChart;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.WorkPlan;
import org.steadwork.exchange.fhir.CaseRecord;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.dayplan.DoseWords;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.people.Patient;

/**
 * A case as plain JSON in the clinic's own words, for the copy that the worker takes along. Days as 2030-12-16, moments in UTC; null is "not
 * recorded", and the four answers of a question are yes, no, unknown and not_asked.
 */
final class CaseDocument {

    private final BodyChart chart;
    private final Instruments instruments;
    private final ExerciseCatalogue catalogue;

    CaseDocument(BodyChart chart, Instruments instruments, ExerciseCatalogue catalogue) {
        this.chart = chart;
        this.instruments = instruments;
        this.catalogue = catalogue;
    }

    Map<String, Object> of(CaseRecord record) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("patient", patient(record.file().patient()));
        document.put("case", caseFile(record.file()));
        document.put("visits", record.visits().stream().map(visit -> row("number", visit.number(), "on", visit.visitedOn(), "kind", visit.kind().label(), "attendance",
                visit.attendance().label(), "note", note(record, visit.number()))).toList());
        document.put("work_status", record.workStatuses().stream().map(status -> row("status", word(status.code()), "from", status.from(), "until", status.until(),
                "hours_a_week", status.hoursAWeek(), "limits", status.limits(), "decided_by", status.decidedBy().label())).toList());
        document.put("work_plans", record.workPlans().stream().map(this::workPlan).toList());
        document.put("symptom_reports", record.reports().stream().map(this::report).toList());
        document.put("scores", record.scores().stream().map(score -> row("instrument", score.instrument(), "name", instruments.find(score.instrument()).map(Instrument::name)
                .orElse(score.instrument()), "version", score.instrumentVersion(), "on", score.scoredOn(), "answers", score.answers(), "value", score.value(), "unit",
                score.unit(), "lowest_possible", score.low(), "highest_possible", score.high(), "estimated", score.estimated())).toList());
        document.put("own_activities", record.activities().stream().map(rating -> row("activity", rating.activity().words(), "on", rating.ratedOn(), "rating",
                rating.rating())).toList());
        document.put("goals", record.goals().stream().map(goal -> row("goal", goal.words(), "set_on", goal.setOn(), "state", word(goal.state()), "where_now",
                goal.whereNow(), "given_up_on", goal.givenUpOn(), "why_given_up", goal.whyGivenUp())).toList());
        document.put("grip", record.grips().stream().map(grip -> row("on", grip.testedOn(), "hand", word(grip.hand()), "trials_kg", grip.kilograms(), "not_done",
                grip.notDone())).toList());
        document.put("range_of_motion", record.motions().stream().map(motion -> row("on", motion.testedOn(), "motion", motion.motion(), "side", word(motion.side()),
                "degrees", motion.degrees(), "pain_limited", motion.painLimited(), "not_measured", motion.notMeasured())).toList());
        document.put("body_measures", record.body().stream().map(value -> row("on", value.on(), "measure", value.label(), "value", value.amount(), "unit", value.unit(),
                "how", value.how(), "standard_error", value.standardError())).toList());
        document.put("red_flag_screens", record.screens().stream().map(screen -> row("on", screen.on(), "set", screen.occasion(), "verdict", screen.verdict(), "signed_by",
                screen.signedBy(), "signed_at", screen.signedAt(), "answers", screen.answers().stream().map(answer -> row("question", answer.prompt(), "answer",
                        word(answer.answer()), "declined", answer.declined(), "note", answer.note())).toList())).toList());
        document.put("red_flags", record.flags().stream().map(flag -> row("flag", flag.name(), "may_point_to", flag.pointsTo(), "urgency", word(flag.urgency()), "certain",
                flag.certain(), "raised_at", flag.raisedAt(), "closed_at", flag.closedAt(), "close_reason", flag.closeReason(), "result", flag.result())).toList());
        document.put("exercises", record.prescriptions().stream().map(this::exercise).toList());
        document.put("consents", record.consents().stream().map(given -> row("to", given.name(), "how", given.how(), "given_on", given.givenOn(), "holds_until",
                given.holdsUntil(), "withdrawn_on", given.withdrawnOn())).toList());
        document.put("letters", record.letters().stream().map(letter -> row("reference", letter.reference(), "title", letter.title(), "to", letter.recipientName(),
                "signed_at", letter.signedAt(), "signed_by", letter.signedBy(), "allowed_by", letter.basis(), "sha256", letter.sha256(), "replaced",
                letter.replaced())).toList());
        return document;
    }

    private static Map<String, Object> patient(Patient patient) {
        return row("file_number", patient.fileNumber(), "given_name", patient.givenName(), "family_name", patient.familyName(), "birth_date", patient.birthDate(), "sex",
                word(patient.sex()), "hand_preferred", word(patient.handedness()), "job", patient.jobTitle(), "employer",
                patient.employer() == null ? null : patient.employer().name(), "site", patient.site() == null ? null : patient.site().name(), "department",
                patient.department(), "hours_a_week", patient.hoursAWeek(), "doctor", patient.doctor() == null ? null : patient.doctor().name(), "phone", patient.phone(),
                "email", patient.email(), "address", patient.address(), "registered_on", patient.registeredOn());
    }

    private static Map<String, Object> caseFile(CaseFile file) {
        return row("complaint", file.complaint(), "onset_on", file.onsetOn(), "referred_by", file.referredBy(), "history", file.history(), "clinician",
                file.clinician().fullName(), "opened_on", file.openedOn(), "next_review_on", file.nextReviewOn(), "closed_on", file.closedOn(), "close_reason",
                file.closeReason() == null ? null : file.closeReason().label(), "close_note", file.closeNote());
    }

    private static Map<String, Object> note(CaseRecord record, int visit) {
        VisitNote note = record.notes().get(visit);
        return note == null ? null : row("subjective", note.subjective(), "objective", note.objective(), "assessment", note.assessment(), "plan", note.plan(), "signed_by",
                note.signedBy(), "signed_at", note.signedAt(), "addenda", record.addenda().stream().filter(one -> one.note().id().equals(note.id()))
                        .map(one -> row("words", one.words(), "written_by", one.writtenBy(), "written_at", one.writtenAt())).toList());
    }

    private Map<String, Object> workPlan(WorkPlan plan) {
        return row("number", plan.number(), "starts_on", plan.terms().startsOn(), "agreed_with", plan.terms().agreedWith(), "agreed_on", plan.terms().agreedOn(),
                "restrictions", plan.terms().restrictions(), "ended_on", plan.endedOn(), "end_reason", plan.endReason(), "weeks", plan.weekRows().stream()
                        .map(week -> row("week", week.number(), "from", week.from(), "until", week.until(), "minutes", week.minutes(), "normal", week.normal())).toList());
    }

    private Map<String, Object> report(SymptomReport report) {
        return row("on", report.reportedOn(), "symptom_free", report.symptomFree(), "course_over_the_day", word(report.pattern().course()), "night_waking",
                word(report.pattern().nightWaking()), "cough_or_sneeze", word(report.pattern().coughOrSneeze()), "worse_with", report.pattern().aggravating(), "eased_by",
                report.pattern().easing(), "own_words", report.pattern().ownWords(), "zones", report.readings().stream().map(this::zone).toList());
    }

    private Map<String, Object> zone(RegionReading reading) {
        return row("zone", chart.zone(reading.zone()).label(), "pain_now", reading.now(), "pain_worst", reading.worst(), "pain_average", reading.average(), "pain_at_work",
                reading.atWork(), "limits_work", reading.limitsWork(), "kinds", reading.kinds().stream().map(CaseDocument::word).toList(), "since", reading.since(),
                "pattern", reading.pattern());
    }

    private Map<String, Object> exercise(Prescription given) {
        String per = catalogue.find(given.exerciseKey()).map(Exercise::per).orElse("");
        return row("exercise", catalogue.find(given.exerciseKey()).map(Exercise::name).orElse(given.exerciseKey()), "side", given.side().label(), "dose",
                DoseWords.of(given.dose(), per), "pain_ceiling", given.painCeiling(), "note", given.note(), "started_on", given.startedOn(), "ended_on", given.endedOn(),
                "end_reason", given.endReason());
    }

    private static String word(Enum<?> constant) {
        return constant == null ? null : constant.name().toLowerCase(Locale.ROOT);
    }

    /** A row of names and values; days and moments as their ISO text, everything else as it is. */
    static Map<String, Object> row(Object... namesAndValues) {
        Map<String, Object> row = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            Object value = namesAndValues[i + 1];
            row.put((String) namesAndValues[i], value instanceof Temporal ? value.toString() : value instanceof List<?> list ? new ArrayList<>(list) : value);
        }
        return row;
    }
}
