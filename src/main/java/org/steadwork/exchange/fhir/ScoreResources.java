package org.steadwork.exchange.fhir;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.hl7.fhir.r4.model.DateType;
import org.hl7.fhir.r4.model.Goal.GoalLifecycleStatus;
import org.hl7.fhir.r4.model.Observation;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.outcome.ActivityRating;
import org.steadwork.outcome.Goal;
import org.steadwork.outcome.GoalState;
import org.steadwork.outcome.GripMeasurement;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.MotionMeasurement;
import org.steadwork.outcome.Score;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Motion;
import org.steadwork.web.Dates;
import org.steadwork.workplace.MeasuredBody;

/** What was measured: scores with the answers behind them, own activities, grip, motion, the body; and the goals. */
final class ScoreResources {

    /** Ratings of pain alone have keys that begin like this. */
    private static final String PAIN = "nprs";
    private static final String PAIN_NOW = "nprs_now";

    private final Subject about;
    private final Instruments instruments;
    private final QuestionnaireResources questionnaires;

    ScoreResources(Subject about, Instruments instruments) {
        this.about = about;
        this.instruments = instruments;
        this.questionnaires = new QuestionnaireResources(about);
    }

    void add(CaseRecord record) {
        record.scores().stream().filter(score -> about.has(category(score))).forEach(this::score);
        if (about.has(InformationCategory.OUTCOME_SCORES)) {
            record.activities().stream().filter(rating -> rating.rating() != null).forEach(this::activity);
            record.grips().stream().filter(grip -> !grip.blank()).forEach(this::grip);
            record.motions().stream().filter(motion -> !motion.blank()).forEach(this::motion);
            record.goals().forEach(this::goal);
        }
        if (about.has(InformationCategory.WORKSTATION_FINDINGS)) {
            record.body().forEach(this::body);
        }
    }

    /** As letters part them: a screen asks about mood and outlook, so its score is as private as notes about them. */
    private InformationCategory category(Score score) {
        if (score.instrument().startsWith(PAIN)) {
            return InformationCategory.PAIN_SCORES;
        }
        return instruments.find(score.instrument()).filter(Instrument::outcome).isPresent() ? InformationCategory.OUTCOME_SCORES : InformationCategory.PSYCHOSOCIAL_NOTES;
    }

    private void score(Score score) {
        Optional<Instrument> instrument = instruments.find(score.instrument());
        String name = instrument.map(Instrument::name).orElse(score.instrument());
        Observation observation = about.observation(Codes.score(name + ", version " + score.instrumentVersion(), instrument.map(ScoreResources::loinc).orElse("")), "Questionnaire",
                score.scoredOn());
        if (score.value() == null) {
            observation.setDataAbsentReason(Codes.absent("unknown", "Too few items answered for a score"));
            if (score.low() != null) {
                observation.addNote().setText("The answers given allow from " + number(score.low()) + " to " + number(score.high()) + ".");
            }
        } else {
            observation.setValue(Codes.amount(score.value(), score.unit()));
        }
        if (score.estimated()) {
            observation.addNote().setText("Items without an answer were filled in by the instrument\u2019s own rule.");
        }
        instrument.filter(known -> known.version().equals(score.instrumentVersion()) && score.answers().size() <= known.items().size())
                .ifPresent(known -> observation.addDerivedFrom(about.draft().to(questionnaires.add(score, known), null)));
        about.draft().add("score " + score.id(), observation, name + ": " + (score.value() == null ? "no score" : number(score.value()) + " " + score.unit()) + ", "
                + Dates.shown(score.scoredOn()));
    }

    /** The code of pain now says nothing of a week's average or worst, and for those none is known. */
    private static String loinc(Instrument instrument) {
        return instrument.loinc().equals(Codes.PAIN_NOW) && !instrument.key().equals(PAIN_NOW) ? "" : instrument.loinc();
    }

    private void activity(ActivityRating rating) {
        Observation observation = about.observation(Codes.words("Ability at an activity of the patient\u2019s own, 0 unable to 10 as before: " + rating.activity().words()),
                "Questionnaire", rating.ratedOn()).setValue(Codes.amount(rating.rating(), ""));
        about.draft().add("activity " + rating.activity().id() + " " + rating.ratedOn(), observation, rating.activity().words() + ": " + rating.rating() + " of 10, "
                + Dates.shown(rating.ratedOn()));
    }

    private void grip(GripMeasurement grip) {
        String side = grip.hand().label();
        Observation observation = about.observation(Codes.words("Grip strength"), "Examination", grip.testedOn());
        observation.setBodySite(Codes.words("Hand, " + side));
        List<BigDecimal> trials = grip.kilograms();
        for (int i = 0; i < trials.size(); i++) {
            var component = observation.addComponent().setCode(Codes.words("Trial " + (i + 1)));
            if (trials.get(i) == null) {
                component.setDataAbsentReason(Codes.absent(grip.notDone() == null ? "unknown" : "not-performed", grip.notDone() == null ? "not noted" : grip.notDone()));
            } else {
                component.setValue(Codes.amount(trials.get(i), "kg"));
            }
        }
        about.draft().add("grip " + grip.id(), observation, "Grip strength, hand " + side + ", " + Dates.shown(grip.testedOn()));
    }

    private void motion(MotionMeasurement motion) {
        String name = instruments.rangeOfMotion().motions().stream().filter(known -> known.key().equals(motion.motion())).findFirst().map(Motion::name).orElse(motion.motion());
        Observation observation = about.observation(Codes.words("Range of motion: " + name), "Examination", motion.testedOn());
        observation.setBodySite(Codes.words(motion.side().label()));
        if (motion.degrees() == null) {
            observation.setDataAbsentReason(Codes.absent("not-performed", motion.notMeasured() == null ? "not measured" : motion.notMeasured()));
        } else {
            observation.setValue(Codes.amount(motion.degrees(), "\u00b0"));
        }
        if (motion.device() != null) {
            observation.setMethod(Codes.words(motion.device().words()));
        }
        if (motion.painLimited()) {
            observation.addNote().setText("Limited by pain.");
        }
        about.draft().add("motion " + motion.id(), observation, "Range of motion: " + name + ", " + motion.side().label() + ", " + Dates.shown(motion.testedOn()));
    }

    private void body(MeasuredBody.Value value) {
        Observation observation = about.observation(Codes.words(value.label()), "Examination", value.on()).setValue(Codes.amount(value.amount().stripTrailingZeros(), value.unit()));
        observation.setMethod(Codes.words(value.how()));
        if (value.standardError().signum() > 0) {
            observation.addNote().setText("Standard error " + value.standardError().stripTrailingZeros().toPlainString() + " " + value.unit() + ".");
        }
        about.draft().add("body " + value.assessmentId() + " " + value.key(), observation, value.label() + ": " + value.amount().stripTrailingZeros().toPlainString() + " "
                + value.unit() + ", " + value.how());
    }

    private void goal(Goal goal) {
        org.hl7.fhir.r4.model.Goal resource = new org.hl7.fhir.r4.model.Goal().setDescription(Codes.words(goal.words())).setSubject(about.patient())
                .setLifecycleStatus(goal.state() == GoalState.GIVEN_UP ? GoalLifecycleStatus.CANCELLED : goal.state() == GoalState.MET ? GoalLifecycleStatus.COMPLETED
                        : GoalLifecycleStatus.ACTIVE);
        resource.setStart(new DateType(goal.setOn().toString()));
        if (goal.state() != GoalState.GIVEN_UP) {
            resource.setAchievementStatus(Codes.words(goal.state().label()));
        }
        if (goal.whereNow() != null) {
            resource.addNote().setText(goal.whereNow());
        }
        if (goal.whyGivenUp() != null) {
            resource.setStatusReason(goal.whyGivenUp());
        }
        about.draft().add(goalName(goal), resource, "Goal: " + goal.words() + " (" + goal.state().label() + ")");
    }

    static String goalName(Goal goal) {
        return "goal " + goal.id();
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
