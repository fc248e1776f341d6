package org.steadwork.exchange.fhir;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.context.support.IValidationSupport;
import ca.uhn.fhir.parser.DataFormatException;
import ca.uhn.fhir.validation.FhirValidator;
import ca.uhn.fhir.validation.ResultSeverityEnum;
import ca.uhn.fhir.validation.SingleValidationMessage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.hl7.fhir.common.hapi.validation.support.CommonCodeSystemsTerminologyService;
import org.hl7.fhir.common.hapi.validation.support.InMemoryTerminologyServerValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain;
import org.hl7.fhir.common.hapi.validation.validator.FhirInstanceValidator;
import org.hl7.fhir.instance.model.api.IBaseResource;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.Questionnaire;

/** HL7's own validator with the definitions of R4, offline. What it may warn about stands here, each with its reason; all else fails. */
final class Hl7Validator {

    /** Warnings that are expected, by what they say. */
    private static final Map<Pattern, String> ALLOWED = Map.of(
            Pattern.compile("^CodeSystem is unknown and can't be validated: http://loinc.org for 'http://loinc.org#(72514-3|97909-6)'$"),
            "LOINC is not part of the validator's package and nothing is fetched; both codes are from the list of those looked up",
            Pattern.compile("^UCUM Codes that contain human readable annotations like \\{(score|regions)} can be misleading .*this usage should be checked$"),
            "UCUM has no unit for points on a scale; the annotation says which number it is, the unit's words say the same, and nothing here compares units");

    private final FhirContext context = FhirContext.forR4();
    private final Questionnaires questionnaires = new Questionnaires(context);
    private final FhirValidator validator = context.newValidator();

    Hl7Validator() {
        validator.registerValidatorModule(new FhirInstanceValidator(new ValidationSupportChain(questionnaires, new DefaultProfileValidationSupport(context),
                new CommonCodeSystemsTerminologyService(context), new InMemoryTerminologyServerValidationSupport(context))));
    }

    /** Returns every error, and every warning that is not expected, in the validator's words with the place. */
    List<String> wrongIn(String json) {
        // the questionnaires travel in the bundle; only then can the validator hold the answers against them
        Bundle bundle;
        try {
            bundle = (Bundle) context.newJsonParser().parseResource(json);
        } catch (DataFormatException e) {
            return List.of("FATAL " + e.getMessage());
        }
        bundle.getEntry().stream().map(Bundle.BundleEntryComponent::getResource).filter(Questionnaire.class::isInstance).map(Questionnaire.class::cast)
                .forEach(one -> questionnaires.byUrl.put(one.getUrl(), one));
        Map<String, String> wrong = new TreeMap<>();
        for (SingleValidationMessage message : validator.validateWithResult(json).getMessages()) {
            boolean heavy = message.getSeverity() == ResultSeverityEnum.ERROR || message.getSeverity() == ResultSeverityEnum.FATAL;
            boolean expected = !heavy && ALLOWED.keySet().stream().anyMatch(pattern -> pattern.matcher(message.getMessage()).find());
            if (message.getSeverity() != ResultSeverityEnum.INFORMATION && !expected) {
                wrong.putIfAbsent(message.getSeverity() + " " + message.getMessage(), message.getLocationString());
            }
        }
        List<String> all = new ArrayList<>();
        wrong.forEach((what, where) -> all.add(what + " at " + where));
        return all;
    }

    /** Hands the validator the questionnaires that travel in the bundle. */
    private record Questionnaires(FhirContext context, Map<String, Questionnaire> byUrl) implements IValidationSupport {

        Questionnaires(FhirContext context) {
            this(context, new HashMap<>());
        }

        @Override
        public FhirContext getFhirContext() {
            return context;
        }

        @Override
        public <T extends IBaseResource> T fetchResource(Class<T> type, String uri) {
            return uri != null && (type == null || type.isAssignableFrom(Questionnaire.class)) && byUrl.containsKey(uri.replaceFirst("\\|.*", ""))
                    ? cast(byUrl.get(uri.replaceFirst("\\|.*", ""))) : null;
        }

        @SuppressWarnings("unchecked")
        private static <T extends IBaseResource> T cast(Questionnaire found) {
            return (T) found;
        }
    }
}
