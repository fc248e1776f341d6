package org.steadwork.content;

import java.util.LinkedHashMap;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/** A map of a YAML file as plain data, with the line of its key; for content whose lists nest in lists. */
public final class PlainEntry {

    private final String file;
    private final int line;
    private final MappingNode node;

    PlainEntry(String file, int line, MappingNode node) {
        this.file = file;
        this.line = line;
        this.node = node;
    }

    /** Makes the exception that stops the start; the caller throws it. */
    public ContentException problem(String reason) {
        return new ContentException(file, line, reason);
    }

    /** Returns the nested maps of a key that must hold a map of maps, in the order written. */
    public Map<String, PlainEntry> entries(String key) {
        PlainEntry parent = nested().get(key);
        if (parent == null) {
            throw problem("'" + key + "' must be a map");
        }
        Map<String, PlainEntry> entries = parent.nested();
        if (entries.size() != parent.node.getValue().size()) {
            throw parent.problem("'" + key + "' must be a map of maps, each key written once");
        }
        return entries;
    }

    /** Returns the values as texts, numbers, truths, and lists and maps of them to any depth. */
    public Map<String, Object> values() {
        try {
            return new Constructor().values(node);
        } catch (MarkedYAMLException e) {
            throw Content.problem(file, e);
        }
    }

    private Map<String, PlainEntry> nested() {
        Map<String, PlainEntry> nested = new LinkedHashMap<>();
        for (NodeTuple pair : node.getValue()) {
            if (pair.getKeyNode() instanceof ScalarNode key && pair.getValueNode() instanceof MappingNode map) {
                nested.put(key.getValue(), new PlainEntry(file, Content.line(key), map));
            }
        }
        return nested;
    }

    private static final class Constructor extends SafeConstructor {

        Constructor() {
            super(refusingDuplicates());
        }

        private static LoaderOptions refusingDuplicates() {
            LoaderOptions options = new LoaderOptions();
            options.setAllowDuplicateKeys(false);
            return options;
        }

        @SuppressWarnings("unchecked")
        Map<String, Object> values(Node node) {
            return (Map<String, Object>) constructDocument(node);
        }
    }
}
