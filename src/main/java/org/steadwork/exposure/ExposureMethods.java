package org.steadwork.exposure;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.steadwork.bench.AnswerDocument;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.Calculators;

/** The methods whose results are kept with a case, and how they are written into a record and read back. */
@ApplicationScoped
public class ExposureMethods {

    private static final TypeReference<Map<String, Object>> TREE = new TypeReference<>() {
    };

    @Inject
    Instance<MethodCalculator> methods;

    @Inject
    Calculators calculators;

    @Inject
    ObjectMapper json;

    private final String edition = ExposureContent.edition();

    /** Those that look at a person's task, by their titles. */
    List<Calculator> all() {
        return methods.stream().filter(MethodCalculator::keptWithCase).sorted(Comparator.comparing(Calculator::title)).map(one -> (Calculator) one).toList();
    }

    Optional<Calculator> named(String key) {
        return all().stream().filter(one -> one.key().equals(key)).findFirst();
    }

    /**
     * Computes what was entered and keeps it in a record.
     *
     * @throws org.steadwork.bench.CalculatorRefusal when it cannot be computed
     */
    public void keep(ExposureRecord record, String method, Map<String, Object> given) {
        Calculator calculator = named(method).orElseThrow(() -> new IllegalArgumentException("No exposure method is called " + method));
        keep(record, calculator, given, calculators.answer(calculator, given));
    }

    void keep(ExposureRecord record, Calculator calculator, Map<String, Object> given, BenchAnswer answer) {
        String headline = answer.headlines().stream().limit(2).map(one -> one.label() + " " + one.value() + (one.unit().isEmpty() ? "" : "\u00a0" + one.unit()))
                .collect(Collectors.joining("; "));
        record.keep(calculator.key(), calculator.title(), new ExposureRecord.Shown(headline, answer.band(), answer.mark().css()), written(given),
                written(AnswerDocument.of(calculator, answer)), edition);
    }

    Map<String, Object> read(String kept) {
        try {
            return json.readValue(kept, TREE);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A kept exposure result cannot be read", e);
        }
    }

    private String written(Map<String, Object> tree) {
        try {
            return json.writeValueAsString(tree);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("An exposure result cannot be written", e);
        }
    }
}
