package org.steadwork.letter;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.people.Correspondent;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** Beginning a letter: to whom it goes; the rest is drafted from the case. */
@Path("/cases/{id: \\d+}/letters/new/{kind: [a-z_]+}")
@RolesAllowed("clinician")
class LetterNewPages {

    @CheckedTemplate(basePath = "letter", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance letterNew(CaseHead head, String kind, String title, boolean employer, boolean other, boolean insurer, List<Option> readers, Form form);
    }

    private static final String OTHER = "other";

    @Inject
    CaseHeads heads;

    @Inject
    LetterContent content;

    @Inject
    Readers readers;

    @Inject
    LetterDesk desks;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @GET
    public Response choose(@RestPath long id, @RestPath String kind) {
        LetterKind chosen = content.kind(kind);
        CaseHead head = heads.open(id, CaseTab.LETTERS);
        List<Option> options = options(head.file(), chosen);
        return Answers.page(page(head, chosen, options, Form.empty().with("to", options.get(0).value())));
    }

    @POST
    @Transactional
    public Response begin(@RestPath long id, @RestPath String kind) {
        LetterKind chosen = content.kind(kind);
        CaseFile file = heads.find(id);
        Form form = posted.read();
        LetterReader reader = form.value("to").equals(OTHER) && other(chosen) ? other(form)
                : readers.find(file, chosen.recipients(), form.value("to")).orElse(null);
        if (reader == null) {
            form.error("to", "Choose who the letter goes to.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.LETTERS), chosen, options(file, chosen), form));
        }
        Letter letter = desks.begin(file, chosen, reader, account.get());
        audit.record("drafted letter", file.patient().id(), id, letter.reference());
        return Answers.seeOther(LetterView.path(letter));
    }

    /** Reads a reader who is not on record yet and keeps them; null with errors noted when something is missing. */
    private LetterReader other(Form form) {
        Correspondent.Kind kind = form.choice("otherKind", "Kind of reader", Correspondent.Kind.class);
        String name = form.requiredText("otherName", "Name or service", 120);
        String organisation = form.text("otherOrganisation", 160);
        String address = form.text("otherAddress", 400);
        return form.hasErrors() ? null : readers.add(kind == null ? Correspondent.Kind.DOCTOR : kind, name, organisation, address);
    }

    private List<Option> options(CaseFile file, LetterKind kind) {
        List<Option> options = new ArrayList<>(Readers.options(readers.of(file, kind.recipients())));
        if (other(kind)) {
            options.add(new Option(OTHER, "Somebody else: fill in below"));
        }
        return options.isEmpty() ? List.of(new Option("", "No employer is on record")) : options;
    }

    private static TemplateInstance page(CaseHead head, LetterKind kind, List<Option> options, Form form) {
        return Templates.letterNew(head, kind.key(), kind.title(), employer(kind), other(kind), kind.recipients().contains(Recipient.INSURER), options, form);
    }

    /** True when the letter can go to somebody who is not on record yet. */
    private static boolean other(LetterKind kind) {
        return kind.recipients().contains(Recipient.DOCTOR) || kind.recipients().contains(Recipient.SPECIALIST);
    }

    private static boolean employer(LetterKind kind) {
        return kind.recipients().contains(Recipient.EMPLOYER);
    }
}
