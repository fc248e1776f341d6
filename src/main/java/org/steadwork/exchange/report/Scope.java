package org.steadwork.exchange.report;

import java.util.Arrays;
import java.util.Optional;

/** What a token may read. The name is that of the role the bearer has. */
enum Scope {
    FIGURES(Scope.FIGURES_READ, "Figures", "counts of cases by month and region; small numbers are withheld"),
    CASES(Scope.CASES_READ, "Cases, pseudonymous", "one row for each case without name, file number or birth date");

    static final String FIGURES_READ = "figures:read";
    static final String CASES_READ = "cases:read-pseudonymous";

    private final String role;
    private final String label;
    private final String meaning;

    Scope(String role, String label, String meaning) {
        this.role = role;
        this.label = label;
        this.meaning = meaning;
    }

    public String role() {
        return role;
    }

    public String label() {
        return label;
    }

    public String meaning() {
        return meaning;
    }

    static Optional<Scope> of(String role) {
        return Arrays.stream(values()).filter(scope -> scope.role.equals(role)).findFirst();
    }
}
