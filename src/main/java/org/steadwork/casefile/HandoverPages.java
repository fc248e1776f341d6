package org.steadwork.casefile;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.Account;
import org.steadwork.account.Accounts;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** Giving a case to another clinician, with the reason. */
@Path("/cases/{id: \\d+}/hand-over")
@RolesAllowed("clinician")
class HandoverPages {

    @CheckedTemplate(basePath = "casefile", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance caseHandover(CaseHead head, Form form, List<Option> clinicians, List<Handover> earlier);
    }

    private static final int LONGEST_REASON = 300;

    @Inject
    CaseHeads heads;

    @Inject
    Accounts accounts;

    @Inject
    EntityManager db;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.VISITS);
        return Answers.page(page(head, Form.empty().with("version", head.file().version())));
    }

    @POST
    @Transactional
    public Response handOver(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        Optional<Account> to = others(file).stream().filter(one -> String.valueOf(one.id()).equals(form.value("to"))).findFirst();
        if (to.isEmpty()) {
            form.error("to", "Hand over to: choose a clinician who works here and does not treat this case already.");
        }
        String reason = form.requiredText("reason", "Reason", LONGEST_REASON);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.VISITS), form));
        }
        try {
            file.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            return Answers.conflict(page(heads.head(file, CaseTab.VISITS), form.conflictsWith(Form.empty(), stale.stored())));
        }
        String names = file.clinician().displayName() + " to " + to.get().displayName();
        db.persist(new Handover(file, to.get(), reason, account.get(), Instant.now(clock)));
        audit.record("handed over case", file.patient().id(), id, names);
        return Answers.seeOther("/cases/" + id + "/hand-over");
    }

    private TemplateInstance page(CaseHead head, Form form) {
        List<Option> clinicians = others(head.file()).stream().map(one -> new Option(String.valueOf(one.id()), one.fullName())).toList();
        List<Handover> earlier = db.createQuery("from Handover h join fetch h.from join fetch h.to join fetch h.handedBy where h.caseFile.id = :id order by h.id desc",
                Handover.class).setParameter("id", head.id()).getResultList();
        return Templates.caseHandover(head, form, clinicians, earlier);
    }

    private List<Account> others(CaseFile file) {
        return accounts.clinicians().stream().filter(one -> !one.id().equals(file.clinician().id())).toList();
    }
}
