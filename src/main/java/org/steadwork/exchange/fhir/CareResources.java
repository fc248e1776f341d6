package org.steadwork.exchange.fhir;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hl7.fhir.r4.model.Attachment;
import org.hl7.fhir.r4.model.Coding;
import org.hl7.fhir.r4.model.DocumentReference;
import org.hl7.fhir.r4.model.Encounter;
import org.hl7.fhir.r4.model.EpisodeOfCare;
import org.hl7.fhir.r4.model.Enumerations.DocumentReferenceStatus;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.Period;
import org.steadwork.casefile.Addendum;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatusCode;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;

/** The course of a case: EpisodeOfCare, Encounter, work status as Observation, and the signed notes as documents. */
final class CareResources {

    static final String EPISODE = "episode";

    private final Subject about;

    CareResources(Subject about) {
        this.about = about;
    }

    void add(CaseRecord record, SignatureResources signatures) {
        episode(record.file());
        if (about.has(InformationCategory.ATTENDANCE)) {
            record.visits().forEach(visit -> encounter(visit, record.file()));
        }
        if (about.has(InformationCategory.FUNCTIONAL_CAPACITY)) {
            record.workStatuses().forEach(this::workStatus);
        }
        // a note holds every kind of information at once, so it goes to the worker alone
        if (about.portion().isOwn()) {
            record.notes().values().stream().filter(VisitNote::signed).forEach(note -> note(note, record.addenda(), signatures));
        }
    }

    private void episode(CaseFile file) {
        EpisodeOfCare episode = new EpisodeOfCare().setStatus(file.open() ? EpisodeOfCare.EpisodeOfCareStatus.ACTIVE : EpisodeOfCare.EpisodeOfCareStatus.FINISHED);
        episode.addIdentifier().setSystem(about.draft().address("case numbers")).setValue(String.valueOf(file.id()));
        episode.addType(Codes.words("Occupational physiotherapy"));
        episode.setPatient(about.patient()).setManagingOrganization(about.clinic()).setCareManager(about.clinician());
        episode.setPeriod(period(file.openedOn(), file.closedOn()));
        about.draft().add(EPISODE, episode, "Case opened " + Dates.shown(file.openedOn()) + (file.open() ? ", open" : ", closed " + Dates.shown(file.closedOn())
                + (file.closeReason() == null ? "" : ": " + file.closeReason().label())));
    }

    private void encounter(Visit visit, CaseFile file) {
        Encounter encounter = new Encounter().setStatus(status(visit.attendance())).setSubject(about.patient());
        encounter.setClass_(kind(visit.kind()));
        // FHIR has no word of its own for a visit that was missed, so the attendance stands in words beside the kind
        encounter.addType(Codes.words(visit.kind().label() + ", " + visit.attendance().label()));
        encounter.addEpisodeOfCare(about.draft().to(EPISODE, null));
        encounter.addParticipant().setIndividual(about.clinician());
        encounter.setServiceProvider(about.clinic());
        encounter.setPeriod(period(visit.visitedOn(), visit.visitedOn()));
        if (file.complaint() != null && about.has(InformationCategory.SYMPTOMS)) {
            encounter.addReasonCode(Codes.words(file.complaint()));
        }
        about.draft().add(name(visit), encounter, "Visit " + visit.number() + " on " + Dates.shown(visit.visitedOn()) + ": " + visit.kind().label() + ", "
                + visit.attendance().label());
    }

    static String name(Visit visit) {
        return "visit " + visit.id();
    }

    private static Encounter.EncounterStatus status(Attendance attendance) {
        return switch (attendance) {
            case PLANNED -> Encounter.EncounterStatus.PLANNED;
            case ATTENDED -> Encounter.EncounterStatus.FINISHED;
            case MISSED, CANCELLED, LATE_CANCELLED -> Encounter.EncounterStatus.CANCELLED;
        };
    }

    private static Coding kind(VisitKind kind) {
        return switch (kind) {
            case PHONE -> new Coding(Codes.ACT, "VR", "virtual");
            case WORK_PLACE -> new Coding(Codes.ACT, "FLD", "field");
            case INITIAL, FOLLOW_UP, DISCHARGE -> new Coding(Codes.ACT, "AMB", "ambulatory");
        };
    }

    private void workStatus(WorkStatus status) {
        Observation observation = about.observation(Codes.words("Work status"), "Work", status.from());
        observation.setEffective(period(status.from(), status.until()));
        if (status.code() == WorkStatusCode.UNKNOWN) {
            observation.setDataAbsentReason(Codes.absent("unknown", "not established"));
        } else {
            observation.setValue(Codes.words(status.code().label() + ": " + status.code().meaning()));
        }
        if (status.hoursAWeek() != null) {
            observation.addComponent().setCode(Codes.words("Hours worked a week")).setValue(Codes.amount(status.hoursAWeek(), "h/wk"));
        }
        if (status.limits() != null) {
            observation.addNote().setText(status.limits());
        }
        about.draft().add("work status " + status.id(), observation, "Work status from " + Dates.shown(status.from()) + ": " + status.code().label());
    }

    private void note(VisitNote note, List<Addendum> addenda, SignatureResources signatures) {
        List<String> lines = new ArrayList<>();
        part(lines, "Subjective", note.subjective());
        part(lines, "Objective", note.objective());
        part(lines, "Assessment", note.assessment());
        part(lines, "Plan", note.plan());
        addenda.stream().filter(one -> one.note().id().equals(note.id()))
                .forEach(one -> part(lines, "Addendum of " + Dates.shown(one.writtenAt()) + ", " + one.writtenBy(), one.words()));
        String title = "Note of visit " + note.visit().number() + ", " + Dates.shown(note.visit().visitedOn());
        DocumentReference document = new DocumentReference().setStatus(DocumentReferenceStatus.CURRENT).setDocStatus(DocumentReference.ReferredDocumentStatus.FINAL)
                .setType(Codes.words("Visit note")).setSubject(about.patient()).setDateElement(Codes.instant(note.signedAt())).addAuthor(about.draft().to("", note.signedBy()));
        Attachment attachment = LetterResources.attachment("text/plain;charset=utf-8", String.join("\n\n", lines).getBytes(StandardCharsets.UTF_8));
        document.addContent().setAttachment(attachment.setTitle(title).setCreationElement(Codes.moment(note.signedAt())));
        document.getContext().addEncounter(about.draft().to(name(note.visit()), null));
        String name = "note " + note.id();
        about.draft().add(name, document, title + ", signed by " + note.signedBy());
        signatures.add(name, note.signedBy(), note.signedAt());
    }

    private static void part(List<String> lines, String heading, String words) {
        if (words != null) {
            lines.add(heading + ":\n" + words);
        }
    }

    /** A span of days; an end that is not known stays open. */
    static Period period(LocalDate from, LocalDate until) {
        Period period = new Period().setStartElement(Codes.day(from));
        return until == null ? period : period.setEndElement(Codes.day(until));
    }
}
