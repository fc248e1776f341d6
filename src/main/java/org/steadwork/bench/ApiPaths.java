package org.steadwork.bench;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Paths;
import org.steadwork.web.ApiProblem;

/** Leaves the pages out of the OpenAPI document when the product is built, so that no start has to read them. */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class ApiPaths implements OASFilter {

    @Override
    public void filterOpenAPI(OpenAPI document) {
        Paths paths = OASFactory.createPaths();
        if (document.getPaths() != null) {
            document.getPaths().getPathItems().forEach((path, item) -> {
                if (ApiProblem.concerns(path)) {
                    paths.addPathItem(path, item);
                }
            });
        }
        document.setPaths(paths);
    }
}
