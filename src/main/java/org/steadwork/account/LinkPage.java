package org.steadwork.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.UriInfo;
import java.time.Instant;

/** The page that shows a one-time link, this once, to be printed or handed over. */
final class LinkPage {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance oneTimeLink(Account account, String address, Instant until);
    }

    private LinkPage() {
    }

    static TemplateInstance of(Account account, SignInLinks.Made made, UriInfo uri) {
        return Templates.oneTimeLink(account, uri.getBaseUri().resolve("/sign-in/link/" + made.token()).toString(), made.until());
    }
}
