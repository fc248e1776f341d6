package org.steadwork.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.steadwork.web.Answers;

/** All accounts of the clinic. */
@Path("/clinic/accounts")
@RolesAllowed("lead")
class ClinicAccountsPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance clinicAccounts(List<Account> accounts, boolean required);
    }

    @Inject
    Accounts accounts;

    @Inject
    SecondFactors factors;

    @GET
    public Response all() {
        return Answers.page(Templates.clinicAccounts(accounts.all(), factors.required()));
    }
}
