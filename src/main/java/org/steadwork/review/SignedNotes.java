package org.steadwork.review;

import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.VisitNotes;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;

/** The page of a signed note, and the answer to whoever still tries to change it. */
@ApplicationScoped
class SignedNotes {

    @Inject
    CaseHeads heads;

    @Inject
    VisitNotes notes;

    TemplateInstance page(CaseHead head, VisitNote note, Form form) {
        return ReviewPages.Templates.signedNote(head, note, notes.addenda(note), late(note), form);
    }

    /** A signed note is not changed: the page says so, with status 409 and the note as it stands. */
    Response refused(CaseFile file, VisitNote note) {
        return refused(file, note, Form.empty());
    }

    /** The same for who was still writing on the note: what they typed otherwise than it was signed is offered as the addendum. */
    Response refused(CaseFile file, VisitNote note, Form typed) {
        Form form = Form.empty().with("words", typedOtherwise(note, typed));
        form.error("words", "The note is signed and stays as it is. Nothing was changed; write an addendum.");
        return Answers.conflict(page(heads.head(file, CaseTab.VISITS), note, form));
    }

    private static String typedOtherwise(VisitNote note, Form typed) {
        Map<String, String> signed = new LinkedHashMap<>();
        signed.put("subjective", note.subjective());
        signed.put("objective", note.objective());
        signed.put("assessment", note.assessment());
        signed.put("plan", note.plan());
        return signed.entrySet().stream().map(part -> Map.entry(Objects.toString(part.getValue(), ""), typed.value(part.getKey()).replace("\r\n", "\n").strip()))
                .filter(part -> !part.getValue().isEmpty() && !part.getValue().equals(part.getKey().strip()))
                .map(Map.Entry::getValue).collect(Collectors.joining("\n\n"));
    }

    /** True when the note was signed later than the day after its visit: it is then marked as a late entry. */
    static boolean late(VisitNote note) {
        return LocalDate.ofInstant(note.signedAt(), ZoneId.systemDefault()).isAfter(note.visit().visitedOn());
    }
}
