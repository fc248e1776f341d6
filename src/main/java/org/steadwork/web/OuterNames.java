package org.steadwork.web;

import io.quarkus.qute.CompletedStage;
import io.quarkus.qute.EngineConfiguration;
import io.quarkus.qute.EvalContext;
import io.quarkus.qute.Mapper;
import io.quarkus.qute.ResolutionContext;
import io.quarkus.qute.Results;
import io.quarkus.qute.ValueResolver;
import java.util.concurrent.CompletionStage;

/**
 * Finds a name of a template where it was given: in the section it stands in, or one around it. It finds nothing that the engine would not
 * find; but the engine asks the resolver of each of our several hundred classes in vain before it looks one section further out, and
 * does so again at each use. A form spent nine tenths of its time on that.
 */
@EngineConfiguration
public class OuterNames implements ValueResolver {

    @Override
    public int getPriority() {
        return 1000;
    }

    /** For the first name of an expression, in data that are names and their values; never for what is asked of a value. */
    @Override
    public boolean appliesTo(EvalContext context) {
        return context.getBase() instanceof Mapper && context.getParams().isEmpty() && context.resolutionContext().getData() == context.getBase();
    }

    @Override
    public CompletionStage<Object> resolve(EvalContext context) {
        String name = context.getName();
        ResolutionContext section = context.resolutionContext();
        while (section != null && (section.getData() == null || section.getData() instanceof Mapper)) {
            if (section.getData() instanceof Mapper given && given.appliesTo(name)) {
                CompletionStage<Object> value = given.getAsync(name);
                if (!isNotFound(value)) {
                    return value;
                }
            }
            section = section.getParent();
        }
        return Results.notFound(context);
    }

    private static boolean isNotFound(CompletionStage<Object> value) {
        return value instanceof CompletedStage<Object> known && !known.isFailure() && Results.isNotFound(known.get());
    }
}
