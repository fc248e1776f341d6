package org.steadwork.worklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Account;
import org.steadwork.account.Role;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** The lead's view of the team, and handing a case over. */
@QuarkusTest
class TeamPagesTest {

    private static final LocalDate TODAY = LocalDate.now();

    @Inject
    RuleCases cases;

    @Inject
    Team team;

    @Inject
    CaseFiles files;

    @Inject
    TestAccounts accounts;

    @Inject
    Statements statements;

    private TeamRow row(Account account) {
        team.upToDate(TODAY);
        return QuarkusTransaction.requiringNew().call(() -> team.on(TODAY)).stream().filter(row -> row.id().equals(account.id())).findFirst().orElseThrow();
    }

    @Test
    void aCaseHandedOverGoesWithWhatTodaySaysOfIt() {
        Account from = accounts.of(Role.CLINICIAN);
        Account to = accounts.of(Role.LEAD);
        long id = cases.open("Team-Handed");
        cases.sql("update case_file set next_review_on = date '2026-04-01' where id = %d", id);
        cases.addVisit(id, 2, TODAY, "PLANNED");
        TeamRow fromBefore = row(from);
        TeamRow toBefore = row(to);
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String path = "/cases/" + id + "/hand-over";
        visitor.open(path);
        visitor.submit(path, Map.of("to", String.valueOf(to.id())));
        assertEquals(422, visitor.status(), "a reason is asked for");
        visitor.submit(path, Map.of("to", String.valueOf(from.id()), "reason", "Leave"));
        assertEquals(422, visitor.status(), "not to oneself");
        Visitor late = accounts.visitor(Role.LEAD);
        late.open(path);
        visitor.submit(path, Map.of("to", String.valueOf(to.id()), "reason", "On leave from Monday"));
        assertEquals(200, visitor.status());
        assertTrue(visitor.page().select("section[aria-labelledby=before]").text().contains("T. Clinician T. Lead On leave from Monday"), visitor.page().text());
        late.post(path, Map.of("csrf-token", List.of(late.page().select("input[name=csrf-token]").first().val()), "version", List.of(late.page().select("[name=version]").val()),
                "to", List.of(String.valueOf(from.id())), "reason", List.of("Late")));
        assertEquals(409, late.status(), "the case was handed over meanwhile");
        assertEquals(to.id(), QuarkusTransaction.requiringNew().call(() -> files.withPeople(id).orElseThrow().clinician().id()));
        TeamRow fromAfter = row(from);
        TeamRow toAfter = row(to);
        assertEquals(fromBefore.cases() - 1, fromAfter.cases());
        assertEquals(toBefore.cases() + 1, toAfter.cases());
        assertEquals(toBefore.overdue() + 1, toAfter.overdue());
        assertEquals(toBefore.visits() + 1, toAfter.visits());
        assertEquals(toBefore.unsigned() + 1, toAfter.unsigned(), "the first visit’s note is not signed");
        assertTrue(accounts.visitor(Role.LEAD).open("/clinic").text().contains("handed over case T. Clinician to T. Lead"));
    }

    @Test
    void theTeamIsForTheLeadAndItsQueriesAreCounted() {
        assertEquals(403, visit(Role.CLINICIAN).status());
        assertEquals(403, visit(Role.ASSISTANT).status());
        Visitor lead = visit(Role.LEAD);
        assertEquals(200, lead.status());
        Account clinician = accounts.of(Role.CLINICIAN);
        assertEquals(1, lead.page().select("a[href=/?who=" + clinician.id() + "]").size());
        long few = statements.during(() -> QuarkusTransaction.requiringNew().run(() -> team.on(TODAY)));
        cases.open("Team-More");
        team.upToDate(TODAY);
        assertEquals(few, statements.during(() -> QuarkusTransaction.requiringNew().run(() -> team.on(TODAY))));
        assertEquals(5, few);
    }

    private Visitor visit(Role role) {
        Visitor visitor = accounts.visitor(role);
        visitor.open("/team");
        return visitor;
    }
}
