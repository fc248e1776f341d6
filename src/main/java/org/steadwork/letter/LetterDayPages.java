package org.steadwork.letter;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.persistence.PersistenceException;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.Account;
import org.steadwork.account.CurrentAccount;
import org.steadwork.account.PasswordAsked;
import org.steadwork.casefile.access.CaseAccess;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** All drafts of a clinic day on one page: what each still wants, its pages, and one signature for those that want nothing. */
@Path("/letters")
@RolesAllowed("clinician")
class LetterDayPages {

    @CheckedTemplate(basePath = "letter", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance letterDay(LocalDate day, List<DayDraft> drafts, Form form, List<String> signed);
    }

    /**
     * One draft of the day.
     *
     * @param wanting what it still wants
     * @param ready   true when nothing stands in the way and nothing is asked
     */
    public record DayDraft(Letter letter, String path, String title, String to, String patient, List<Check> wanting, boolean ready, List<Integer> pages) {

        /** Returns the name of the box that takes it into the signature, with the version that is shown. */
        public String tick() {
            return letter.id() + "-" + letter.version();
        }
    }

    @Inject
    Letters letters;

    @Inject
    LetterDesk desks;

    @Inject
    LetterContent content;

    @Inject
    Signing signing;

    @Inject
    CaseAccess access;

    @Inject
    CurrentAccount account;

    @Inject
    PasswordAsked password;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response day(@RestQuery String day) {
        return Answers.page(page(read(day), Form.empty(), List.of()));
    }

    /** Signs the drafts that were ticked, each by itself: what cannot be signed any more is said, and the others stay signed. */
    @POST
    public Response sign() {
        Form form = posted.read();
        LocalDate day = read(form.value("day"));
        Account signer = account.get();
        if (form.values("sign").isEmpty()) {
            form.error("sign", "Tick the letters to sign.");
        }
        password.check(form, "password", signer);
        List<String> signed = new ArrayList<>();
        if (!form.hasErrors()) {
            for (DayDraft draft : drafts(day)) {
                if (form.is("sign", draft.tick())) {
                    sign(draft, signer, form, signed);
                }
            }
            long missing = form.values("sign").size() - signed.size();
            if (missing > 0 && !form.hasErrors()) {
                form.error("sign", missing + (missing == 1 ? " letter was" : " letters were") + " saved or signed meanwhile. Look at the page again, then sign.");
            }
            letters.forget();
        }
        TemplateInstance page = page(day, form.with("password", ""), signed);
        return form.hasErrors() ? Answers.unprocessable(page) : Answers.page(page);
    }

    private void sign(DayDraft draft, Account signer, Form form, List<String> signed) {
        try {
            signing.sign(draft.letter().caseFile().id(), draft.letter().number(), draft.letter().version(), signer, Map.of());
            signed.add(draft.letter().reference());
        } catch (StaleVersionException | PersistenceException | IllegalStateException refused) {
            form.error("sign", "Letter " + draft.letter().reference() + " was not signed: it changed meanwhile, or something stands in the way. Open it.");
        }
    }

    private TemplateInstance page(LocalDate day, Form form, List<String> signed) {
        return Templates.letterDay(day, drafts(day), form, signed);
    }

    private List<DayDraft> drafts(LocalDate day) {
        ZoneId zone = ZoneId.systemDefault();
        Account author = account.get();
        List<Letter> all = letters.draftsOf(day, day.atStartOfDay(zone).toInstant(), day.plusDays(1).atStartOfDay(zone).toInstant());
        Set<Long> open = access.openOf(all.stream().map(letter -> letter.caseFile().id()).toList());
        return all.stream().filter(letter -> open.contains(letter.caseFile().id())).map(letter -> {
            Desk desk = desks.look(letter, author);
            List<Check> wanting = desk.checks().stream().filter(check -> check.level() != Check.Level.HOLDS).toList();
            return new DayDraft(letter, LetterView.path(letter), content.title(letter.kind()), letter.reader().name(), letter.caseFile().patient().name(),
                    wanting, !desk.stopped() && desk.asked().isEmpty(), java.util.stream.IntStream.rangeClosed(1, desk.file().pages()).boxed().toList());
        }).toList();
    }

    /** Reads the day asked for; without one that can be read, today. */
    private LocalDate read(String day) {
        try {
            return day == null || day.isBlank() ? LocalDate.now(clock) : Dates.parse(day);
        } catch (DateTimeException e) {
            return LocalDate.now(clock);
        }
    }
}
