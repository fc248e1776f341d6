package org.steadwork.bench;

import java.util.List;

/** Says that a calculator cannot compute what it was given, and at which fields. */
public final class CalculatorRefusal extends RuntimeException {

    private static final long serialVersionUID = 1;
    private final transient List<FieldProblem> problems;

    public CalculatorRefusal(List<FieldProblem> problems) {
        super(problems.toString());
        this.problems = List.copyOf(problems);
    }

    /** Refuses one value; the field is a path as {@link Inputs#path(String)} gives it. */
    public static CalculatorRefusal at(String field, String reason, Object given, String allowed) {
        return new CalculatorRefusal(List.of(new FieldProblem(field, reason, given == null ? "" : given.toString(), allowed)));
    }

    public List<FieldProblem> problems() {
        return problems;
    }
}
