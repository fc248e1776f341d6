package org.steadwork.worklist;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.steadwork.casefile.AttentionRule;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.web.Answers;

/** All rules of Today: when each fires, what clears it, how long it may be put off, where it comes from. */
@Path("/today/rules")
@RolesAllowed("clinician")
class RulePages {

    @CheckedTemplate(basePath = "worklist", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance rules(List<Group> groups);
    }

    /** The rules of one urgency. */
    record Group(String name, String key, List<AttentionRule> rules) {
    }

    @Inject
    AttentionRules rules;

    @GET
    public Response all() {
        return Answers.page(Templates.rules(List.of(group("Now", "now"), group("Due today", "today"), group("Soon", "soon"))));
    }

    private Group group(String name, String key) {
        return new Group(name, key, rules.all().stream().filter(rule -> rule.urgency().name().equalsIgnoreCase(key)).toList());
    }
}
