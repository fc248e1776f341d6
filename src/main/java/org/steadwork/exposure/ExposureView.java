package org.steadwork.exposure;

import java.util.ArrayList;
import java.util.List;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.CalculatorView;
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

    /** One result as it was kept. */
    record Kept(ExposureRecord record, BenchAnswer answer, List<String> limits, String standing, List<String> sources, ExposureRecord correctedBy, Form form) {
    }
}
