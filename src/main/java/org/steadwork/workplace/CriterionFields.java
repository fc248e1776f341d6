package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.web.Form;
import org.steadwork.workplace.fit.Criterion;

/** The criteria of one group that are entered by hand: measured ones as numbers, observed ones as answers. */
record CriterionFields(String key, String title, List<Criterion> measured, List<Criterion> observed) {

    private static final Map<String, String> TITLES = Map.ofEntries(Map.entry("chair", "Chair and feet"), Map.entry("desk", "Desk and leg room"),
            Map.entry("standing", "Standing"), Map.entry("screen", "Screen"), Map.entry("keys", "Keyboard and arms"), Map.entry("mouse", "Mouse"),
            Map.entry("papers", "Papers and telephone"), Map.entry("light", "Light"), Map.entry("room", "Noise and climate"),
            Map.entry("work", "How the day goes"));

    private static final double MOST_LENGTH = 3000;
    private static final double MOST_LIGHT = 100_000;
    private static final double MOST_DAY = 24;
    private static final double MOST_OTHER = 1440;

    static List<CriterionFields> of(List<Criterion> criteria) {
        Map<String, CriterionFields> groups = new LinkedHashMap<>();
        for (Criterion criterion : criteria) {
            CriterionFields group = groups.computeIfAbsent(criterion.group(),
                    key -> new CriterionFields(key, TITLES.getOrDefault(key, key), new ArrayList<>(), new ArrayList<>()));
            if (typed(criterion)) {
                group.measured.add(criterion);
            } else if (criterion.kind() == Criterion.Kind.OBSERVED) {
                group.observed.add(criterion);
            }
        }
        return groups.values().stream().filter(group -> !group.measured.isEmpty() || !group.observed.isEmpty()).toList();
    }

    static String title(String group) {
        return TITLES.getOrDefault(group, group);
    }

    /** Tells whether a criterion has a field of its own; one that reads another entry has none. */
    static boolean typed(Criterion criterion) {
        return criterion.kind() == Criterion.Kind.MEASURED && criterion.reads().equals(criterion.id());
    }

    /** The largest number that can be meant, in the criterion's unit. */
    static double most(Criterion criterion) {
        return switch (criterion.unit()) {
            case "mm" -> MOST_LENGTH;
            case "lx" -> MOST_LIGHT;
            case "h" -> MOST_DAY;
            case "°", "°C", "%", "dB(A)" -> 180;
            default -> MOST_OTHER;
        };
    }

    /** Says how many of this group were entered, for the line that opens it. */
    public String entered(Form form) {
        long given = measured.stream().filter(criterion -> form.has(criterion.id())).count()
                + observed.stream().filter(criterion -> form.has(criterion.id()) && !form.is(criterion.id(), "not_asked")).count();
        return given + " of " + (measured.size() + observed.size()) + " looked at";
    }

    /** Tells whether the group stands open: something in it was entered or is wrong. */
    public boolean open(Form form) {
        return measured.stream().anyMatch(c -> form.has(c.id()) || form.error(c.id()) != null)
                || observed.stream().anyMatch(c -> form.error(c.id()) != null || form.has(c.id()) && !form.is(c.id(), "not_asked"));
    }
}
