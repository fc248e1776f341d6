package org.steadwork.casefile;

import io.quarkus.runtime.Startup;
import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;

/** The rules of Today, read and checked once when the application starts, with what the clinic set for itself. */
@Startup
@ApplicationScoped
public class AttentionRules {

    private static final String SHIPPED = "worklist/rules.yaml";

    @ConfigProperty(name = "steadwork.data-folder")
    String dataFolder;

    @Inject
    @Any
    Instance<Attention> beans;

    private Map<String, AttentionRule> byKey;

    @PostConstruct
    void read() {
        Entry shipped = Content.yaml(SHIPPED);
        Map<String, AttentionRule> rules = AttentionRuleReader.read(shipped);
        Optional<Entry> own = own();
        byKey = own.isPresent() ? AttentionRuleReader.changed(rules, own.get()) : rules;
        requireApplied(shipped);
    }

    /** Returns a rule by its key, which a bean that applies it knows to be there. */
    public AttentionRule rule(String key) {
        AttentionRule rule = byKey.get(key);
        if (rule == null) {
            throw new IllegalArgumentException("There is no rule of Today called " + key);
        }
        return rule;
    }

    /** Returns a rule that was there when an entry was written, and may be gone. */
    public Optional<AttentionRule> find(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    public List<AttentionRule> all() {
        return List.copyOf(byKey.values());
    }

    /** A rule that nobody applies would look as if nothing met it, and a bean without its rule could not speak. */
    private void requireApplied(Entry shipped) {
        Set<String> applied = new HashSet<>();
        for (Attention bean : beans) {
            for (String key : bean.rules()) {
                if (!byKey.containsKey(key)) {
                    throw shipped.problem("the rule '" + key + "' is missing, and the application applies it");
                }
                if (!applied.add(key)) {
                    throw shipped.problem("the rule '" + key + "' is applied twice");
                }
            }
        }
        for (Entry rule : shipped.entries("rules")) {
            if (!applied.contains(rule.text("key"))) {
                throw rule.problem("nothing in the application applies the rule '" + rule.text("key") + "'");
            }
        }
    }

    private Optional<Entry> own() {
        Path file = Path.of(dataFolder).resolve("worklist").resolve("rules.yaml");
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return Optional.of(Content.yaml(file.toString(), reader));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
