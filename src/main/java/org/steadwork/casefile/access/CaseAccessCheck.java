package org.steadwork.casefile.access;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.inject.Inject;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;

/** Stands before every address of a case, so that no page can forget to ask: who is not in its care team is shown the way to open it with a reason. */
class CaseAccessCheck {

    private static final Pattern CASE = Pattern.compile("/?(?:api/)?cases/(\\d{1,18})(/.*)?");

    /** What holds everything about a person, and so every case of theirs. */
    private static final Pattern WHOLE_PERSON = Pattern.compile("/?patients/(\\d{1,18})/(?:export|record-copy)(?:/.*)?");
    private static final String BREAK_GLASS = "/break-glass";

    @Inject
    SecurityIdentity identity;

    @Inject
    CaseAccess access;

    @Inject
    CaseFiles cases;

    @Inject
    AuditTrail audit;

    @ServerRequestFilter
    public Response check(ContainerRequestContext request) {
        if (identity.isAnonymous() || access.opensEvery()) {
            return null;
        }
        CaseFile file = closed(request.getUriInfo().getPath()).flatMap(cases::withPeople).orElse(null);
        if (file == null) {
            return null; // open, of no case, or the page answers that there is no such case
        }
        audit.record("was refused a case", file.patient().id(), file.id(), "outside its care team");
        return BreakGlassPage.refusal(file);
    }

    /** Returns a case that the address leads into and that is closed to whoever asks. */
    private Optional<Long> closed(String address) {
        Matcher person = WHOLE_PERSON.matcher(address);
        if (person.matches()) {
            List<Long> all = cases.ofPatient(Long.parseLong(person.group(1))).stream().map(CaseFile::id).toList();
            Set<Long> open = access.openOf(all);
            return all.stream().filter(id -> !open.contains(id)).findFirst();
        }
        Matcher path = CASE.matcher(address);
        if (!path.matches() || BREAK_GLASS.equals(path.group(2)) || access.opens(Long.parseLong(path.group(1)))) {
            return Optional.empty();
        }
        return Optional.of(Long.valueOf(path.group(1)));
    }
}
