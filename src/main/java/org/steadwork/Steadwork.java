package org.steadwork;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.util.List;

/**
 * Starts the clinic. With the word {@code demo} it starts the invented demo clinic instead, which has a database of its own;
 * any other word is refused, so that a slip never opens the wrong records.
 */
@QuarkusMain
public final class Steadwork {

    private Steadwork() {
    }

    public static void main(String... words) {
        List<String> given = List.of(words);
        if (given.equals(List.of("demo"))) {
            System.setProperty("quarkus.profile", "demo");
        } else if (!given.isEmpty()) {
            System.err.println("Steadwork is started without a word, or with the word demo. It was given: " + String.join(" ", given));
            System.exit(2);
        }
        Quarkus.run();
    }
}
