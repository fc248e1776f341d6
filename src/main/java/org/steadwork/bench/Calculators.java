package org.steadwork.bench;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jboss.logging.Logger;
import org.steadwork.web.Form;

/** All calculators of the Bench; made at the start, so that wrong content of theirs is found then. */
@Startup
@ApplicationScoped
public class Calculators {

    private static final Logger LOG = Logger.getLogger(Calculators.class);

    private final Map<String, Calculator> byKey = new TreeMap<>();

    Calculators() {
    }

    @Inject
    Calculators(Instance<Calculator> single, Instance<CalculatorFamily> families) {
        single.forEach(this::add);
        families.forEach(family -> family.calculators().forEach(this::add));
    }

    private void add(Calculator calculator) {
        if (!calculator.key().matches("[a-z0-9_-]+(/[a-z0-9_-]+)*")) {
            throw new IllegalStateException("A calculator's key is lower-case words with dashes, parted by slashes, but one is " + calculator.key());
        }
        if (calculator.limits().isEmpty() || calculator.sources().isEmpty() || calculator.standing().isBlank()) {
            throw new IllegalStateException("The calculator " + calculator.key() + " must state its limits, its sources and its standing");
        }
        if (byKey.put(calculator.key(), calculator) != null) {
            throw new IllegalStateException("Two calculators are called " + calculator.key());
        }
    }

    public Optional<Calculator> named(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** All, by their keys. */
    public List<Calculator> all() {
        return List.copyOf(byKey.values());
    }

    /** Those of a group, by their titles. */
    public List<Calculator> in(BenchGroup group) {
        return byKey.values().stream().filter(one -> one.group() == group).sorted(Comparator.comparing(Calculator::title)).toList();
    }

    /**
     * Checks what was given and computes.
     *
     * @throws CalculatorRefusal when it cannot be computed, naming the fields
     */
    public BenchAnswer answer(Calculator calculator, Map<String, Object> given) {
        Inputs values = InputCheck.read(calculator.inputs(), given);
        try {
            return calculator.calculate(values);
        } catch (IllegalArgumentException e) {
            // a rule of the pure package that the inputs' ranges do not state: its words are meant to be read
            LOG.debugf("%s refused: %s", calculator.key(), e.getMessage());
            throw CalculatorRefusal.at("", e.getMessage() == null ? "These values do not go together." : e.getMessage(), "", "");
        }
    }

    /** A form filled in with a tree as the API would be sent it; an empty one shows where the calculator starts. */
    public Form form(Calculator calculator, Map<String, Object> given) {
        return FormTree.write(calculator.inputs(), given);
    }

    /** Adds a row to the form, or takes its last away, when the button for that was pressed; says whether one was. */
    public boolean changeRows(Calculator calculator, Form form) {
        String act = form.value("do");
        for (Input input : calculator.inputs()) {
            if (act.equals("more-" + input.name()) || act.equals("fewer-" + input.name())) {
                int before = FormTree.count(input.name(), input, form);
                form.with(input.name() + ".count", act.startsWith("more") ? before + 1 : before - 1);
                if (FormTree.count(input.name(), input, form) > before) {
                    FormTree.start(input, before, form);
                }
                return true;
            }
        }
        return false;
    }

    /** What was entered, as the API would be sent it, and its answer. */
    public record Computed(Map<String, Object> given, BenchAnswer answer) {
    }

    /** Computes what stands in the form; notes on the form what is wrong, and then there is no answer. */
    public Optional<Computed> compute(Calculator calculator, Form form) {
        Map<String, Object> given = FormTree.read(calculator.inputs(), form);
        try {
            return Optional.of(new Computed(given, answer(calculator, given)));
        } catch (CalculatorRefusal refusal) {
            refusal.problems().forEach(problem -> form.error(problem.field().isEmpty() ? "answers" : problem.field(), problem.reason()));
            return Optional.empty();
        }
    }
}
