package org.steadwork.redflag;

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
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.redflag.rules.Occasion;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** The screens of a case: beginning a new one, signing the newest, reading an old one. */
@Path("/cases/{id: \\d+}/red-flags/screens")
@RolesAllowed("clinician")
class RedFlagScreenPages {

    @Inject
    CaseHeads heads;

    @Inject
    RedFlagScreens screens;

    @Inject
    RedFlagPageBuilder pages;

    @Inject
    ScreenKeeping keeping;

    @Inject
    ScreenForm forms;

    @Inject
    ReportedRegions reported;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    /** Begins a new screen; one that is not signed yet is gone on with instead. */
    @POST
    @Transactional
    public Response begin(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        Occasion occasion = form.requiredChoice("occasion", "Which set", Occasion.class);
        if (form.hasErrors()) {
            return Answers.unprocessable(again(file, form));
        }
        if (screens.latest(id).map(RedFlagScreen::signed).orElse(true)) {
            RedFlagScreen screen = keeping.begin(file, occasion, account.get(), clock.instant());
            keeping.save(screen, reported.of(id), Map.of(), clock.instant());
            audit.record("began red-flag screen", file.patient().id(), id, "screen " + screen.id());
        }
        return Answers.seeOther(CaseTab.RED_FLAGS.href(id));
    }

    @POST
    @Path("/{screenId: \\d+}/sign")
    @Transactional
    public Response sign(@RestPath long id, @RestPath long screenId) {
        CaseFile file = heads.find(id);
        RedFlagScreen screen = screens.withAnswers(id, screenId).orElseThrow(NotFoundException::new);
        Form form = posted.read();
        try {
            screen.requireVersion(screen.signed() ? -1 : form.version());
        } catch (StaleVersionException stale) {
            Form stored = forms.show(screen);
            return Answers.conflict(RedFlagPages.Templates.redFlags(heads.head(file, CaseTab.RED_FLAGS),
                    pages.page(file, stored), stored.conflictsWith(stored, stale.stored()), RedFlagPageBuilder.OCCASIONS));
        }
        screen.sign(account.get(), clock.instant());
        audit.record("signed red-flag screen", file.patient().id(), id, "screen " + screenId);
        return Answers.seeOther(CaseTab.RED_FLAGS.href(id));
    }

    @GET
    @Path("/{screenId: \\d+}")
    public Response read(@RestPath long id, @RestPath long screenId) {
        CaseHead head = heads.open(id, CaseTab.RED_FLAGS);
        RedFlagScreen screen = screens.withAnswers(id, screenId).orElseThrow(NotFoundException::new);
        RedFlagPage.ScreenRow row = pages.page(head.file(), forms.show(screen), screen, null).screen();
        return Answers.page(RedFlagPages.Templates.screen(head, row, answered(screen)));
    }

    /** The answers grouped by what they say, danger first; what was not asked is listed too. */
    private List<QuestionGroup> answered(RedFlagScreen screen) {
        Form form = forms.show(screen);
        Map<String, List<QuestionRow>> groups = new LinkedHashMap<>();
        List.of("yes", "unknown", "not_asked", "no").forEach(answer -> groups.put(answer, new ArrayList<>()));
        keeping.evaluate(screen).due().forEach(due -> {
            QuestionRow row = forms.row(due.key(), form, null);
            groups.get(row.value()).add(row);
        });
        screen.answersByKey().keySet().stream().filter(key -> !key.contains("/")).forEach(key -> {
            QuestionRow row = forms.row(key, form, null);
            List<QuestionRow> group = groups.get(row.value());
            if (!row.value().equals("not_asked") && group.stream().noneMatch(one -> one.field().equals(row.field()))) {
                group.add(row);
            }
        });
        return List.of(new QuestionGroup("Yes", null, groups.get("yes")), new QuestionGroup("Unknown", null, groups.get("unknown")),
                new QuestionGroup("Not asked", null, groups.get("not_asked")), new QuestionGroup("No", null, groups.get("no")));
    }

    private TemplateInstance again(CaseFile file, Form typed) {
        Form form = pages.stored(file);
        typed.problems().forEach(problem -> form.error(problem.field(), problem.message()));
        return RedFlagPages.Templates.redFlags(heads.head(file, CaseTab.RED_FLAGS), pages.page(file, form), form, RedFlagPageBuilder.OCCASIONS);
    }
}
