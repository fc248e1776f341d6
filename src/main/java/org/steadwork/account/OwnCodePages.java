package org.steadwork.account;

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
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** One's own one-time codes: setting them up, new recovery codes, and taking them off where the clinic leaves them to choice. */
@Path("/account/codes")
@RolesAllowed("staff")
class OwnCodePages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance ownCodes(Form form, Account account, CodeOffer offer, long codesLeft, boolean required);
    }

    @Inject
    CurrentAccount current;

    @Inject
    PasswordAsked asked;

    @Inject
    SecondFactors factors;

    @Inject
    Sessions sessions;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    public Response codes() {
        return Answers.page(page(Form.empty(), current.get()));
    }

    /** Makes a key; it comes into force with the first code. */
    @POST
    @Path("/begin")
    @Transactional
    public Response begin() {
        Form form = posted.read();
        Account account = current.get();
        if (account.usesCodes()) {
            return Answers.seeOther("/account/codes");
        }
        asked.check(form, "present", account);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(form.with("present", ""), account));
        }
        factors.offer(account);
        return Answers.seeOther("/account/codes");
    }

    @POST
    @Path("/confirm")
    @Transactional
    public Response confirm() {
        Form form = posted.read();
        Account account = current.get();
        if (account.usesCodes() || account.codeKey() == null) {
            return Answers.seeOther("/account/codes");
        }
        List<String> codes = factors.confirm(account, form.value("code"));
        if (codes.isEmpty()) {
            form.error("code", CodeOffer.WRONG);
            return Answers.unprocessable(page(form.with("code", ""), account));
        }
        sessions.endAll(account.id(), current.sessionId());
        audit.record("set up one-time codes", null, null, null);
        return Answers.page(RecoveryCodesPage.of(codes, "/account"));
    }

    @POST
    @Path("/recovery")
    @Transactional
    public Response recovery() {
        Form form = posted.read();
        Account account = current.get();
        if (!account.usesCodes()) {
            return Answers.seeOther("/account/codes");
        }
        asked.check(form, "present", account);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(form.with("present", ""), account));
        }
        audit.record("made new recovery codes", null, null, null);
        return Answers.page(RecoveryCodesPage.of(factors.freshRecoveryCodes(account), "/account"));
    }

    @POST
    @Path("/off")
    @Transactional
    public Response off() {
        Form form = posted.read();
        Account account = current.get();
        if (!account.usesCodes()) {
            return Answers.seeOther("/account/codes");
        }
        if (factors.required()) {
            form.error("presentOff", "This clinic asks everybody for one-time codes. To use another phone, ask the lead to take these off.");
        } else {
            asked.check(form, "presentOff", account);
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(form.with("presentOff", ""), account));
        }
        factors.drop(account);
        sessions.endAll(account.id(), current.sessionId());
        audit.record("took their one-time codes off", null, null, null);
        return Answers.seeOther("/account?after=codes-off");
    }

    private TemplateInstance page(Form form, Account account) {
        boolean offered = account.codeKey() != null && !account.usesCodes();
        return Templates.ownCodes(form, account, offered ? CodeOffer.of(factors, account) : null,
                account.usesCodes() ? factors.recoveryCodesLeft(account) : 0, factors.required());
    }
}
