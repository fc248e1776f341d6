package org.steadwork.bench;

import java.util.List;
import org.steadwork.web.Form;

/** What a calculator's page shows: the form as it stands, and the answer once there is one. */
public record CalculatorView(Calculator calculator, Form form, List<FieldView> fields, BenchAnswer answer) {

    public static CalculatorView of(Calculator calculator, Form form, BenchAnswer answer) {
        List<FieldView> fields = calculator.inputs().stream().map(input -> FieldView.of(input, input.name(),
                input.kind() == Input.Kind.ROWS ? FormTree.count(input.name(), input, form) : 0)).toList();
        return new CalculatorView(calculator, form, fields, answer);
    }

    public boolean answered() {
        return answer != null;
    }

    public String action() {
        return "/bench/" + calculator.key();
    }
}
