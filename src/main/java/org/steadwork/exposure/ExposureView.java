package org.steadwork.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.CalculatorView;
import org.steadwork.bench.Choice;
import org.steadwork.bench.Input;
import org.steadwork.web.Form;

/** What the exposure pages of a case show. */
final class ExposureView {

    private ExposureView() {
    }

    /** One method's results in a case, by task, the latest first. */
    record Shelf(String title, List<ExposureRecord> records) {
    }

    /** The list: results that stand, those that no longer do, and the methods to choose from. */
    record Overview(List<Shelf> shelves, List<ExposureRecord> past, List<Calculator> methods) {

        static Overview of(List<ExposureRecord> all, List<Calculator> methods) {
            List<Shelf> shelves = new ArrayList<>();
            for (ExposureRecord record : all) {
                if (record.standing()) {
                    if (shelves.isEmpty() || !shelves.get(shelves.size() - 1).title().equals(record.title())) {
                        shelves.add(new Shelf(record.title(), new ArrayList<>()));
                    }
                    shelves.get(shelves.size() - 1).records().add(record);
                }
            }
            return new Overview(shelves, all.stream().filter(record -> !record.standing()).toList(), methods);
        }
    }

    /** The form for a new result, with the answer to look at before it is kept; {@code earlier} when it corrects one. */
    record Entry(CalculatorView bench, ExposureRecord earlier, String action) {

        public Form form() {
            return bench.form();
        }
    }

    /** One thing that was entered, in words. */
    record Entered(String label, String value) {

        static List<Entered> of(List<Input> inputs, Map<String, Object> given) {
            List<Entered> entered = new ArrayList<>();
            inputs.stream().filter(input -> given.get(input.name()) != null && !"".equals(given.get(input.name())))
                    .forEach(input -> entered.addAll(of(input, given.get(input.name()))));
            return entered;
        }

        private static List<Entered> of(Input input, Object value) {
            if (value instanceof List<?> rows) {
                List<Entered> all = new ArrayList<>();
                for (int i = 0; i < rows.size(); i++) {
                    @SuppressWarnings("unchecked")
                    List<Entered> row = of(input.columns(), (Map<String, Object>) rows.get(i));
                    all.add(new Entered(input.label() + " " + (i + 1), row.stream().map(one -> one.label() + " " + one.value()).collect(Collectors.joining(", "))));
                }
                return all;
            }
            String words = value instanceof Boolean yes ? (yes ? "yes" : "no")
                    : input.choices().stream().filter(choice -> choice.value().equals(value)).map(Choice::label).findFirst().orElse(String.valueOf(value));
            return List.of(new Entered(input.label(), input.unit().isEmpty() ? words : words.replace('-', '−') + "\u00a0" + input.unit()));
        }
    }

    /** One result as it was kept. */
    record Kept(ExposureRecord record, List<Entered> entered, BenchAnswer answer, List<String> limits, String standing, List<String> sources, ExposureRecord correctedBy, Form form) {
    }
}
