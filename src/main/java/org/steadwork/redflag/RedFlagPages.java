package org.steadwork.redflag;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** Red flags of a case: the result, what to do, the questions; saving answers. */
@Path("/cases/{id: \\d+}/red-flags")
@RolesAllowed("clinician")
class RedFlagPages {

    @CheckedTemplate(basePath = "redflag", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance redFlags(CaseHead head, RedFlagPage page, Form form, List<Option> occasions);

        static native TemplateInstance flag(CaseHead head, RedFlagPage.FlagRow row, boolean open, Form form, List<Option> levels,
                                            List<FlagAction> calls, List<RedFlagPage.FlagRow> others);

        static native TemplateInstance screen(CaseHead head, RedFlagPage.ScreenRow row, List<QuestionGroup> groups);

        static native TemplateInstance safetyNet(CaseFile file, String clinician, String core, SafetyNet.Warnings warnings,
                                                 List<String> regions, LocalDate today);
    }

    @Inject
    CaseHeads heads;

    @Inject
    RedFlagPageBuilder pages;

    @Inject
    RedFlagScreens screens;

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

    @GET
    public Response show(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.RED_FLAGS);
        Form form = pages.stored(head.file());
        return Answers.page(Templates.redFlags(head, pages.page(head.file(), form), form, RedFlagPageBuilder.OCCASIONS));
    }

    @POST
    @Transactional
    public Response saved(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        Map<String, GivenAnswer> given = forms.read(form);
        Optional<RedFlagScreen> latest = screens.latest(id);
        RedFlagScreen shown = latest.filter(screen -> screen.id().toString().equals(form.value("screen"))).orElse(null);
        if (form.hasErrors()) {
            return Answers.unprocessable(again(file, form, shown));
        }
        try {
            requireCurrent(form, latest, shown);
        } catch (StaleVersionException stale) {
            RedFlagScreen now = latest.orElseThrow();
            Form conflict = form.conflictsWith(forms.show(now), stale.stored()).with("screen", now.id());
            return Answers.conflict(again(file, conflict, now));
        }
        RedFlagScreen screen = shown == null ? keeping.begin(file, Occasion.FULL, account.get(), clock.instant()) : shown;
        Set<String> regions = new LinkedHashSet<>(forms.regions(form));
        regions.addAll(reported.of(id));
        keeping.save(screen, regions, given, clock.instant());
        audit.record("saved red-flag answers", file.patient().id(), id, "screen " + screen.id());
        return Answers.seeOther(CaseTab.RED_FLAGS.href(id));
    }

    /** A form made for another screen, or for none, is stale once there is an unsigned or newer one. */
    private static void requireCurrent(Form form, Optional<RedFlagScreen> latest, RedFlagScreen shown) {
        if (shown != null) {
            shown.requireVersion(shown.signed() ? -1 : form.version());
        } else if (latest.isPresent()) {
            throw new StaleVersionException(form.version(), latest.get().version());
        }
    }

    private TemplateInstance again(CaseFile file, Form form, RedFlagScreen screen) {
        return Templates.redFlags(heads.head(file, CaseTab.RED_FLAGS), pages.page(file, form, screen, null), form, RedFlagPageBuilder.OCCASIONS);
    }
}
