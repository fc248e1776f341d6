package org.steadwork.casefile.access;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** The page that asks for a reason, also as the answer to an address of a case that is closed to whoever asks. */
final class BreakGlassPage {

    static final List<Option> HOURS = List.of(new Option("1", "1 hour"), new Option("4", "4 hours"), new Option("12", "12 hours"));

    @CheckedTemplate(basePath = "casefile", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance breakGlass(CaseFile file, Form form, List<Option> hours);
    }

    private BreakGlassPage() {
    }

    static TemplateInstance of(CaseFile file) {
        return of(file, Form.empty().with("hours", "1"));
    }

    static TemplateInstance of(CaseFile file, Form form) {
        return Templates.breakGlass(file, form, HOURS);
    }

    static Response refusal(CaseFile file) {
        return Response.fromResponse(Answers.page(of(file))).status(403).build();
    }
}
