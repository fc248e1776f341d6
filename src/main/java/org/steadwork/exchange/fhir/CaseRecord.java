package org.steadwork.exchange.fhir;

import java.util.List;
import java.util.Map;
import org.steadwork.casefile.Addendum;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.WorkPlan;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.exercise.Prescription;
import org.steadwork.letter.CaseCorrespondence.ConsentGiven;
import org.steadwork.letter.CaseCorrespondence.SignedCopy;
import org.steadwork.outcome.ActivityRating;
import org.steadwork.outcome.Goal;
import org.steadwork.outcome.GripMeasurement;
import org.steadwork.outcome.MotionMeasurement;
import org.steadwork.outcome.Score;
import org.steadwork.redflag.Flag;
import org.steadwork.redflag.ScreenRecords.Screen;
import org.steadwork.workplace.MeasuredBody;

/**
 * Everything of a case that leaves in a format for other programs, read at one moment.
 *
 * @param notes by the number of their visit, drafts among them
 */
public record CaseRecord(CaseFile file, List<Visit> visits, Map<Integer, VisitNote> notes, List<Addendum> addenda, List<WorkStatus> workStatuses,
        List<WorkPlan> workPlans, List<SymptomReport> reports, List<Score> scores, List<ActivityRating> activities, List<Goal> goals,
        List<GripMeasurement> grips, List<MotionMeasurement> motions, List<MeasuredBody.Value> body, List<Screen> screens, List<Flag> flags,
        List<Prescription> prescriptions, List<ConsentGiven> consents, List<SignedCopy> letters) {
}
