package org.steadwork.bench;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import org.steadwork.web.Answers;

/** The Bench: all calculators by what they are about. */
@Path("/bench")
@RolesAllowed("clinician")
class BenchPages {

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance bench(List<Shelf> shelves);
    }

    /** One heading and the calculators under it. */
    record Shelf(BenchGroup group, List<Calculator> calculators) {
    }

    @Inject
    Calculators calculators;

    @GET
    public Response all() {
        return Answers.page(Templates.bench(Arrays.stream(BenchGroup.values()).map(group -> new Shelf(group, calculators.in(group)))
                .filter(shelf -> !shelf.calculators().isEmpty()).toList()));
    }
}
