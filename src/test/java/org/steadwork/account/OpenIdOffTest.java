package org.steadwork.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** Without a provider set, nothing of it is there. */
@QuarkusTest
class OpenIdOffTest {

    @Inject
    TestAccounts accounts;

    @Test
    void theWayIsNotThere() {
        for (String path : List.of("/sign-in/openid", "/sign-in/openid?to=/patients", "/sign-in/openid/back", "/sign-in/openid/back?code=a&state=b",
                "/sign-in/openid/back?error=access_denied")) {
            Visitor visitor = new Visitor();
            visitor.open(path);
            assertEquals(404, visitor.status(), path);
        }
    }

    @Test
    void noPageSpeaksOfIt() {
        Visitor visitor = new Visitor();
        visitor.open("/sign-in?after=openid-refused");
        assertFalse(visitor.page().html().contains("openid"), visitor.page().html());
        assertEquals(0, visitor.page().select("[role=alert]").size());
        Account account = accounts.fresh(Role.CLINICIAN);
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open("/clinic/accounts/" + account.id());
        assertFalse(lead.page().html().contains("openid"), lead.page().html());
        lead.post("/clinic/accounts/" + account.id() + "/openid", Map.of("csrf-token", List.of(lead.page().select("[name=csrf-token]").first().val()),
                "do", List.of("allow")));
        assertEquals(422, lead.status());
        assertTrue(lead.page().text().contains("No OpenID Connect provider is set"), lead.page().text());
    }
}
