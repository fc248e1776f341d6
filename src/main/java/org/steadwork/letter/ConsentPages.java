package org.steadwork.letter;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.letter.disclosure.Rule;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** Recording and withdrawing the worker's consent to write to a named reader. Every box starts empty. */
@Path("/cases/{id: \\d+}/consents")
@RolesAllowed("clinician")
class ConsentPages {

    @CheckedTemplate(basePath = "letter", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance consentNew(CaseHead head, List<Option> readers, ConsentOffer offer, List<Option> ways, Form form);

        static native TemplateInstance consentWithdraw(CaseHead head, Consent consent, Form form);
    }

    /** How long a consent holds unless another day is set; common practice, no source. */
    private static final int DEFAULT_MONTHS = 6;
    private static final List<Recipient> OUTSIDE = List.of(Recipient.EMPLOYER, Recipient.DOCTOR, Recipient.SPECIALIST, Recipient.INSURER,
            Recipient.CASE_REVIEW);

    @Inject
    CaseHeads heads;

    @Inject
    LetterContent content;

    @Inject
    Readers readers;

    @Inject
    Consents consents;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    @Path("/new")
    public Response ask(@RestPath long id, @RestQuery String to) {
        CaseHead head = heads.open(id, CaseTab.LETTERS);
        LocalDate today = LocalDate.now(clock);
        Form form = Form.empty().with("to", to).with("givenOn", Dates.shown(today)).with("until", Dates.shown(today.plusMonths(DEFAULT_MONTHS)));
        return Answers.page(page(head, form));
    }

    @POST
    @Path("/new")
    @Transactional
    public Response record(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        LetterReader reader = readers.find(file, OUTSIDE, form.value("to")).orElse(null);
        if (reader == null) {
            form.error("to", "Choose the reader this consent is for.");
        }
        Consent.How how = form.requiredChoice("how", "How it was given", Consent.How.class);
        LocalDate given = day(form, "givenOn", "Given on", file.openedOn(), LocalDate.now(clock));
        LocalDate until = form.requiredDate("until", "Until");
        if (given != null && until != null && until.isBefore(given)) {
            form.error("until", "It cannot end before it was given. You entered " + Dates.shown(until) + ".");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.LETTERS), form));
        }
        Set<InformationCategory> ticked = ticked(form, reader.kind());
        ConsentOffer offer = ConsentOffer.of(content.matrix(), reader, file.patient().name());
        consents.add(new Consent(file, reader, how, given, until, ticked, offer.shownText(), account.get()));
        audit.record("recorded consent", file.patient().id(), id, reader.kind().name() + ", until " + until);
        return Answers.seeOther(CaseTab.LETTERS.href(id));
    }

    @GET
    @Path("/{consent: \\d+}/withdraw")
    public Response end(@RestPath long id, @RestPath long consent) {
        CaseHead head = heads.open(id, CaseTab.LETTERS);
        Consent found = find(id, consent);
        return Answers.page(Templates.consentWithdraw(head, found,
                Form.empty().with("version", found.version()).with("withdrawnOn", Dates.shown(LocalDate.now(clock)))));
    }

    /** Withdraws a consent; it takes effect at once and asks for no reason. */
    @POST
    @Path("/{consent: \\d+}/withdraw")
    @Transactional
    public Response endPosted(@RestPath long id, @RestPath long consent) {
        CaseFile file = heads.find(id);
        Consent found = find(id, consent);
        Form form = posted.read();
        LocalDate day = day(form, "withdrawnOn", "Withdrawn on", found.givenOn(), LocalDate.now(clock));
        String how = form.text("how", 300);
        if (form.hasErrors()) {
            return Answers.unprocessable(Templates.consentWithdraw(heads.head(file, CaseTab.LETTERS), found, form));
        }
        if (found.withdrawnOn() == null) {
            found.withdraw(day, how);
            audit.record("recorded withdrawal of consent", file.patient().id(), id, found.recipientKind().name());
        }
        return Answers.seeOther(CaseTab.LETTERS.href(id));
    }

    private Consent find(long caseId, long id) {
        return consents.find(caseId, id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(CaseHead head, Form form) {
        ConsentOffer offer = readers.find(head.file(), OUTSIDE, form.value("to"))
                .map(reader -> ConsentOffer.of(content.matrix(), reader, head.file().patient().name())).orElse(null);
        return Templates.consentNew(head, Readers.options(readers.of(head.file(), OUTSIDE)), offer, Option.of(Consent.How.class, Consent.How::label), form);
    }

    /** Reads the ticks; only what may be ticked for this reader counts. */
    private Set<InformationCategory> ticked(Form form, Recipient kind) {
        return Arrays.stream(InformationCategory.values())
                .filter(category -> content.matrix().cell(category, kind).rule() == Rule.EXPLICIT)
                .filter(category -> form.is("tick", category.name())).collect(Collectors.toSet());
    }

    private static LocalDate day(Form form, String field, String label, LocalDate earliest, LocalDate latest) {
        LocalDate day = form.requiredDate(field, label);
        if (day != null && (day.isBefore(earliest) || day.isAfter(latest))) {
            form.error(field, label + " lies between " + Dates.shown(earliest) + " and " + Dates.shown(latest) + ". You entered " + Dates.shown(day) + ".");
        }
        return day;
    }
}
