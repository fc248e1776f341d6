package org.steadwork.exchange.report;

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
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The tokens by which other programs read figures: making one, seeing when it was last used, revoking it. */
@Path("/clinic/tokens")
@RolesAllowed("lead")
class TokenPages {

    @CheckedTemplate(basePath = "exchange", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance tokens(List<Row> tokens, Scope[] scopes, Form form, String made, String said, int mostAMinute);
    }

    /** A token as listed. */
    public record Row(ReportToken token, boolean holds, String state) {
    }

    @Inject
    ReportTokens tokens;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response all() {
        return Answers.page(page(TokenForm.empty(today()), null, null));
    }

    private TemplateInstance page(Form form, String made, String said) {
        List<Row> rows = tokens.all().stream().map(token -> new Row(token, token.holdsOn(today()), token.revokedAt() != null ? "revoked"
                : token.holdsOn(today()) ? "in force" : "run out")).toList();
        return Templates.tokens(rows, Scope.values(), form, made, said, RateBook.MOST_A_MINUTE);
    }

    /** Shows the new token at once and only now, so the answer is the page and not the way to one. */
    @POST
    @Transactional
    public Response make() {
        Form form = posted.read();
        TokenForm typed = TokenForm.read(form, today());
        if (form.hasErrors()) {
            return Answers.unprocessable(page(form, null, null));
        }
        String token = tokens.make(typed.name(), typed.scopes(), typed.expiresOn());
        audit.record("made token for reporting", null, null, typed.name() + ": " + String.join(", ", typed.scopes().stream().map(Scope::role).toList()));
        return Answers.page(page(TokenForm.empty(today()), token, null));
    }

    @POST
    @Path("/{reportToken: \\d+}/revoke")
    @Transactional
    public Response revoke(@RestPath long reportToken) {
        ReportToken found = tokens.find(reportToken).orElseThrow(NotFoundException::new);
        if (found.revokedAt() == null) {
            found.revoke(account.displayName(), Instant.now(clock));
            audit.record("revoked token for reporting", null, null, found.name());
        }
        return Answers.seeOther("/clinic/tokens");
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }
}
