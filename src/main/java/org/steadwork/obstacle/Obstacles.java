package org.steadwork.obstacle;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.content.ReadEarly;

/** The flags of the content and what the results of the risk screens mean, read and checked once when the application starts. */
@Startup
@ApplicationScoped
public class Obstacles implements ReadEarly {

    private static final Set<String> TAGS = Set.of("S", "M", "CP", "P");

    private final Map<String, Obstacle> byKey = read(Content.yaml("obstacles/flags.yaml"));
    private final Map<String, Map<String, Meaning>> screens = screens(Content.yaml("obstacles/screens.yaml"));

    /** What the result of a screen means for the plan: neutral words, and what to do. */
    public record Meaning(String words, String plan) {
    }

    public List<Obstacle> all() {
        return List.copyOf(byKey.values());
    }

    public Optional<Obstacle> find(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** Returns the keys of the screens whose results have a meaning here. */
    public Set<String> screens() {
        return screens.keySet();
    }

    /** Returns what a result of a screen means; empty when the content does not say. */
    public Optional<Meaning> meaning(String screen, String result) {
        return Optional.ofNullable(screens.getOrDefault(screen, Map.of()).get(result));
    }

    static Map<String, Obstacle> read(Entry entry) {
        entry.text("source");
        Map<String, Obstacle> read = new LinkedHashMap<>();
        for (Entry flag : entry.entries("flags")) {
            String tag = flag.text("tag");
            if (!TAGS.contains(tag)) {
                throw flag.problem("'tag' must be one of " + TAGS + ", but is " + tag);
            }
            Obstacle obstacle = new Obstacle(flag.text("key"), flag.constant("kind", Obstacle.Kind.class), flag.text("name"), flag.text("listen"),
                    flag.text("plan"), flag.text("source"), tag);
            if (read.put(obstacle.key(), obstacle) != null) {
                throw flag.problem("the key '" + obstacle.key() + "' is used twice");
            }
        }
        if (read.isEmpty()) {
            throw entry.problem("'flags' is missing");
        }
        return read;
    }

    private static Map<String, Map<String, Meaning>> screens(Entry entry) {
        entry.text("source");
        Map<String, Map<String, Meaning>> read = new LinkedHashMap<>();
        for (Entry screen : entry.entries("screens")) {
            Map<String, Meaning> results = new LinkedHashMap<>();
            screen.entries("results").forEach(result -> results.put(result.text("result"), new Meaning(result.text("words"), result.text("plan"))));
            read.put(screen.text("instrument"), results);
        }
        return read;
    }
}
