package org.steadwork.exchange.fhir;

import org.hl7.fhir.r4.model.BooleanType;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.Period;
import org.steadwork.kernel.Answer;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.redflag.Flag;
import org.steadwork.redflag.ScreenRecords.Answered;
import org.steadwork.redflag.ScreenRecords.Screen;
import org.steadwork.web.Dates;

/** The red-flag questions with their answers, unknown and not asked kept as what they are, and the flags they raised. */
final class RedFlagResources {

    private final Subject about;

    RedFlagResources(Subject about) {
        this.about = about;
    }

    void add(CaseRecord record, SignatureResources signatures) {
        if (!about.has(InformationCategory.RED_FLAG_RESULT)) {
            return;
        }
        record.screens().forEach(screen -> screen(screen, signatures));
        record.flags().forEach(this::flag);
    }

    private void screen(Screen screen, SignatureResources signatures) {
        Observation whole = about.observation(Codes.words("Red-flag screen, " + screen.occasion()), "Red flags", screen.on());
        if (!screen.signed()) {
            whole.setStatus(Observation.ObservationStatus.PRELIMINARY);
        }
        whole.setValue(Codes.words(screen.verdict()));
        for (Answered answered : screen.answers()) {
            whole.addHasMember(about.draft().to(answer(screen, answered), null));
        }
        String name = "screen " + screen.id();
        about.draft().add(name, whole, "Red-flag screen of " + Dates.shown(screen.on()) + ": " + screen.verdict() + (screen.signed() ? "" : ", not signed")
                + ". What is unknown or not asked is not a no.");
        if (screen.signed()) {
            signatures.add(name, screen.signedBy(), screen.signedAt());
        }
    }

    private String answer(Screen screen, Answered answered) {
        Observation observation = about.observation(Codes.words(answered.prompt()), "Red flags", screen.on());
        if (!screen.signed()) {
            observation.setStatus(Observation.ObservationStatus.PRELIMINARY);
        }
        if (answered.answer() == Answer.YES || answered.answer() == Answer.NO) {
            observation.setValue(new BooleanType(answered.answer() == Answer.YES));
        } else {
            observation.setDataAbsentReason(SymptomResources.absent(answered.answer(), answered.declined()));
        }
        if (answered.note() != null) {
            observation.addNote().setText(answered.note());
        }
        String name = "red flag answer " + screen.id() + " " + answered.key();
        about.draft().add(name, observation, answered.prompt() + " " + (answered.declined() ? "asked; would not say" : answered.answer().label()));
        return name;
    }

    private void flag(Flag flag) {
        org.hl7.fhir.r4.model.Flag resource = new org.hl7.fhir.r4.model.Flag();
        resource.setStatus(flag.open() ? org.hl7.fhir.r4.model.Flag.FlagStatus.ACTIVE : org.hl7.fhir.r4.model.Flag.FlagStatus.INACTIVE);
        resource.addCategory(Codes.words("Red flag, " + flag.urgency().label()));
        resource.setCode(Codes.words(flag.name() + (flag.certain() ? "" : " (not known, acted on as a yes)") + "; may point to: " + flag.pointsTo()));
        resource.setSubject(about.patient());
        Period period = new Period().setStartElement(Codes.moment(flag.raisedAt()));
        resource.setPeriod(flag.closedAt() == null ? period : period.setEndElement(Codes.moment(flag.closedAt())));
        about.draft().add("flag " + flag.id(), resource, "Red flag " + (flag.open() ? "open" : "closed") + ": " + flag.name() + ", " + flag.urgency().label());
    }
}
