package org.steadwork.caseload;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The pages of the caseload; all look at the same chosen cases. */
enum CaseloadTab {
    OUTCOMES("", "Outcomes", List.of("responders", "by_region", "change", "completion")),
    TIME("/time", "Time and visits", List.of("return", "discharge", "compare", "visits", "reasons", "waiting")),
    WORK_PLACE("/work-place", "Work place", List.of("put_right", "linked", "associations")),
    QUALITY("/quality", "Quality", List.of("quality"));

    private final String path;
    private final String label;
    private final List<String> tables;

    CaseloadTab(String path, String label, List<String> tables) {
        this.path = path;
        this.label = label;
        this.tables = tables;
    }

    /** Returns the page on which a table stands. */
    static Optional<CaseloadTab> of(String table) {
        return Arrays.stream(values()).filter(tab -> tab.tables.contains(table)).findFirst();
    }

    public String path() {
        return "/caseload" + path;
    }

    public String label() {
        return label;
    }
}
