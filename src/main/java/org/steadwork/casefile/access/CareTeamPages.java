package org.steadwork.casefile.access;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.Account;
import org.steadwork.account.Accounts;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** The care team of a case: the clinician who treats it, and whom the team has taken in. */
@Path("/cases/{id: \\d+}/team")
@RolesAllowed("clinician")
class CareTeamPages {

    @CheckedTemplate(basePath = "casefile", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance careTeam(CaseFile file, List<CareTeamMember> members, Form form, List<Option> others, boolean closed);
    }

    @Inject
    CaseHeads heads;

    @Inject
    CaseAccess access;

    @Inject
    CareTeams teams;

    @Inject
    Accounts accounts;

    @Inject
    CurrentAccount current;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    public Response team(@RestPath long id) {
        CaseFile file = heads.find(id);
        audit.record("viewed care team", file.patient().id(), id, null);
        return Answers.page(page(file, Form.empty()));
    }

    /** Takes a clinician into the team, or out of it with {@code do} = {@code remove}. */
    @POST
    @Transactional
    public Response change(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        boolean remove = form.is("do", "remove");
        String chosen = form.value("account");
        Account account = chosen.matches("\\d{1,18}") ? accounts.findById(Long.parseLong(chosen)) : null;
        boolean member = account != null && teams.members(id).stream().anyMatch(one -> one.account().id().equals(account.id()));
        if (remove ? !member : account == null || member || !offered(file, account)) {
            form.error("account", remove ? "This clinician is not in the team any more." : "Choose a clinician who is not in the team yet.");
            return Answers.unprocessable(page(file, form));
        }
        if (remove) {
            teams.remove(id, account.id());
        } else {
            teams.add(file, account, current.displayName());
        }
        audit.record(remove ? "took a clinician out of the care team" : "took a clinician into the care team", file.patient().id(), id, account.userName());
        // who has taken themselves out may not open the page that comes next
        return Answers.seeOther(access.opens(id) ? "/cases/" + id + "/team" : "/");
    }

    private TemplateInstance page(CaseFile file, Form form) {
        List<CareTeamMember> members = teams.members(file.id());
        Set<Long> in = members.stream().map(member -> member.account().id()).collect(Collectors.toSet());
        List<Option> others = accounts.clinicians().stream().filter(account -> !in.contains(account.id()) && offered(file, account))
                .map(account -> new Option(account.id().toString(), account.displayName())).toList();
        return Templates.careTeam(file, members, form, others, access.rule() == AccessRule.CARE_TEAM);
    }

    private static boolean offered(CaseFile file, Account account) {
        return account.active() && account.role().grants().contains("clinician") && !account.id().equals(file.clinician().id());
    }
}
