package org.steadwork.letter;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.letter.disclosure.Gate;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;

/** The letters of a case: drafts, signed letters, and the consents they rest on. */
@Path("/cases/{id: \\d+}/letters")
@RolesAllowed("clinician")
class LettersPages {

    @CheckedTemplate(basePath = "letter", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance caseLetters(CaseHead head, List<Offer> offers, List<Listed> letters, List<ConsentRow> consents);
    }

    /** A kind of letter that can be drafted. */
    public record Offer(String key, String words) {
    }

    /** A letter with the title of its kind. */
    public record Listed(LetterRow row, String title, String consentWithdrawn) {
    }

    /** A consent as listed. */
    public record ConsentRow(Consent consent, String state, String mark, String ticks, boolean open) {
    }

    @Inject
    CaseHeads heads;

    @Inject
    LetterContent content;

    @Inject
    Letters letters;

    @Inject
    Consents consents;

    @Inject
    Clock clock;

    @GET
    public Response letters(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.LETTERS);
        List<Offer> offers = content.kinds().stream().map(kind -> new Offer(kind.key(), kind.offer())).toList();
        List<Consent> given = consents.ofCase(id);
        List<Listed> listed = letters.ofCase(id).stream().map(row -> new Listed(row, content.title(row.kind()), row.signed() ? given.stream()
                .filter(consent -> consent.recipientName().equals(row.to())).findFirst().map(Consent::withdrawnOn).map(Dates::shown).orElse(null) : null))
                .toList();
        return Answers.page(Templates.caseLetters(head, offers, listed, given.stream().map(this::row).toList()));
    }

    private ConsentRow row(Consent consent) {
        Gate gate = consent.given().on(LocalDate.now(clock));
        String state = gate == Gate.WITHDRAWN ? "withdrawn " + Dates.shown(consent.withdrawnOn()) : gate.label();
        String ticks = String.join(", ", consent.ticked().stream().sorted().map(content.matrix()::label).toList());
        return new ConsentRow(consent, state, gate == Gate.IN_FORCE ? "in" : "none", ticks.isEmpty() ? "nothing beyond what goes with the consent" : ticks,
                gate == Gate.IN_FORCE || gate == Gate.NOT_YET);
    }
}
