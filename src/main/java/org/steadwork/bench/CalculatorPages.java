package org.steadwork.bench;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** One calculator: its form, and its answer; nothing is stored. */
@Path("/bench/{calculator: .+}")
@RolesAllowed("clinician")
class CalculatorPages {

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance calculator(CalculatorView view);
    }

    @Inject
    Calculators calculators;

    @Inject
    PostedForm posted;

    /** The form as it starts, or filled in with the worked example. */
    @GET
    public Response form(@PathParam("calculator") String key, @RestQuery String example) {
        Calculator calculator = find(key);
        Form form = calculators.form(calculator, example == null ? Map.of() : calculator.example());
        return Answers.page(Templates.calculator(CalculatorView.of(calculator, form, null)));
    }

    /** The answer above the form as it was filled in; or, with {@code do}, the form with a row more or less. */
    @POST
    public Response answer(@PathParam("calculator") String key) {
        Calculator calculator = find(key);
        Form form = posted.read();
        if (calculators.changeRows(calculator, form)) {
            return Answers.page(Templates.calculator(CalculatorView.of(calculator, form, null)));
        }
        return calculators.compute(calculator, form).map(computed -> Answers.page(Templates.calculator(CalculatorView.of(calculator, form, computed.answer()))))
                .orElseGet(() -> Answers.unprocessable(Templates.calculator(CalculatorView.of(calculator, form, null))));
    }

    private Calculator find(String key) {
        return calculators.named(key).orElseThrow(NotFoundException::new);
    }
}
