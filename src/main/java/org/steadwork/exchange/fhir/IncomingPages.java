package org.steadwork.exchange.fhir;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.people.PatientIntake;
import org.steadwork.people.PatientRow;
import org.steadwork.people.Patients;
import org.steadwork.people.Sex;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedFile;
import org.steadwork.web.PostedForm;

/** Taking in a patient and ratings of pain from another clinic's file: looked at first, stored only when a clinician says so. */
@Path("/patients/fhir")
@RolesAllowed("clinician")
class IncomingPages {

    @CheckedTemplate(basePath = "exchange", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance fhirNew(Form form);

        static native TemplateInstance fhirPreview(Form form, List<IncomingForm.Line> ratings, List<String> left, List<Known> doubles, List<Option> sexes);
    }

    /** Somebody who may be meant. */
    public record Known(String key, PatientRow row) {
    }

    static final int LARGEST_FILE = 5 * 1024 * 1024;
    private static final int MOST_RATINGS = 300;

    @Inject
    FhirFormat format;

    @Inject
    Patients patients;

    @Inject
    PatientIntake intake;

    @Inject
    IncomingStore store;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response choose() {
        return Answers.page(Templates.fhirNew(Form.empty()));
    }

    /** Reads the file and shows what is in it; nothing is stored, and the file is forgotten. */
    @POST
    public Response look() {
        Form form = posted.read();
        Optional<PostedFile> file = posted.file("file", LARGEST_FILE);
        if (file.isEmpty()) {
            form.error("file", "Choose a file with a FHIR R4 bundle or patient.");
        } else if (file.get().bytes().length > LARGEST_FILE) {
            form.error("file", "The file is larger than 5 MB.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.fhirNew(form));
        }
        try {
            IncomingBundle read = new IncomingBundle(format.read(decoded(file.get().bytes())), clock.getZone());
            if (read.ratings().size() > MOST_RATINGS) {
                throw new UnreadableResource("There are " + read.ratings().size() + " ratings of pain in the file; at most " + MOST_RATINGS + " can be looked through at once.");
            }
            Form shown = IncomingForm.show(read);
            return Answers.page(preview(shown, read.left()));
        } catch (UnreadableResource e) {
            form.error("file", e.getMessage());
            return Answers.unprocessable(Templates.fhirNew(form));
        }
    }

    @POST
    @Path("/store")
    @Transactional
    public Response store() {
        Form form = posted.read();
        LocalDate today = LocalDate.now(clock);
        PatientIntake.Read read = intake.read(form, today);
        IncomingForm typed = IncomingForm.read(form, today);
        if (!read.problems().isEmpty() || form.hasErrors()) {
            return Answers.unprocessable(preview(form, List.of()));
        }
        List<PatientRow> doubles = patients.likelyDoubles(form.value("givenName").strip(), form.value("familyName").strip(), read.birthDate(), null);
        if (!doubles.isEmpty() && typed.person() == null) {
            form.error("person", "Say whether this is somebody we know.");
            return Answers.unprocessable(preview(form, List.of()));
        }
        Long known = typed.known().filter(id -> doubles.stream().anyMatch(row -> row.id() == id)).orElse(null);
        Optional<Long> patient = store.store(read, known, typed, form, today);
        return patient.isEmpty() ? Answers.unprocessable(preview(form, List.of())) : Answers.seeOther("/patients/" + patient.get());
    }

    private TemplateInstance preview(Form form, List<String> left) {
        LocalDate born = born(form);
        List<PatientRow> doubles = born == null || form.value("givenName").isBlank() && form.value("familyName").isBlank() ? List.of()
                : patients.likelyDoubles(form.value("givenName"), form.value("familyName"), born, null);
        return Templates.fhirPreview(form, IncomingForm.lines(form), left, doubles.stream().map(row -> new Known(String.valueOf(row.id()), row)).toList(), Option.of(Sex.class, Sex::label));
    }

    private static LocalDate born(Form form) {
        try {
            return form.has("birthDate") ? Dates.parse(form.value("birthDate")) : null;
        } catch (DateTimeException e) {
            return null;
        }
    }

    private static String decoded(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new UnreadableResource("The file is not in UTF-8, as FHIR asks.");
        }
    }
}
