package org.steadwork.casemap;

import jakarta.enterprise.context.ApplicationScoped;
import io.quarkus.runtime.Startup;
import java.util.LinkedHashMap;
import java.util.Map;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.content.ReadEarly;

/** What each grade of evidence weighs and how it is said; read once from content. */
@Startup
@ApplicationScoped
class Strengths implements ReadEarly {

    /** @param weight more than 0; orders candidates, means nothing by itself */
    record Strength(double weight, String words) {
    }

    private final Map<String, Strength> byGrade;

    Strengths() {
        this(Content.yaml("casemap/strength.yaml"));
    }

    Strengths(Entry content) {
        byGrade = new LinkedHashMap<>();
        for (Entry entry : content.entries("strengths")) {
            entry.text("source");
            entry.text("evidence");
            double weight = entry.number("weight");
            if (!(weight > 0)) {
                throw entry.problem("'weight' must be more than 0, but is " + weight);
            }
            if (byGrade.put(entry.text("key"), new Strength(weight, entry.text("words"))) != null) {
                throw entry.problem("'" + entry.text("key") + "' stands twice");
            }
        }
        if (byGrade.isEmpty()) {
            throw content.problem("There is no grade of evidence");
        }
    }

    /** The strength of a grade; throws {@link IllegalArgumentException} for a grade that content does not know. */
    Strength of(String grade) {
        Strength strength = byGrade.get(grade);
        if (strength == null) {
            throw new IllegalArgumentException("There is no grade of evidence '" + grade + "'; content has " + byGrade.keySet());
        }
        return strength;
    }
}
