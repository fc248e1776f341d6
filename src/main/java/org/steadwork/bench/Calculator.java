package org.steadwork.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One calculator of the Bench. A feature makes it an {@code @ApplicationScoped} bean; page, API and OpenAPI document follow from it.
 * A calculator stores nothing and knows no patient.
 */
public interface Calculator {

    /** The name in addresses, lower case with dashes, parts parted by slashes: {@code lifting}, {@code red-flags/ottawa-ankle}. */
    String key();

    BenchGroup group();

    String title();

    /** One sentence: what it answers. */
    String question();

    /** The limits of its use, each one sentence; shown before any result. At least one. */
    List<String> limits();

    /** What is asked, in the order of the page. */
    List<Input> inputs();

    /** How well its tables and formulas were checked, in words a clinician understands; says "from memory" where that is so. */
    String standing();

    /** Where its method is published. At least one. */
    List<String> sources();

    /** A worked example that gives a result, as it would be sent to the API; by default made of the inputs' own examples. */
    default Map<String, Object> example() {
        Map<String, Object> example = new LinkedHashMap<>();
        for (Input input : inputs()) {
            if (input.example() != null) {
                example.put(input.name(), input.example());
            }
        }
        return example;
    }

    /**
     * Computes the answer.
     *
     * @param given what was entered, each value already of the right kind and within its range
     * @throws CalculatorRefusal when values that are right one by one do not go together; names the field and what is allowed
     * @throws IllegalArgumentException when a rule of the pure package refuses them; its message is shown as it stands
     */
    BenchAnswer calculate(Inputs given);
}
