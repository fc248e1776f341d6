package org.steadwork.content;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Reads the clinical content that ships with the product: YAML and CSV files below {@code content/} on the class path.
 * Every value comes as the text that was written, so that a number keeps the digits of its source; a problem names file,
 * line and reason.
 */
public final class Content {

    private Content() {
    }

    /** Reads a YAML file whose top is a map. */
    public static Entry yaml(String path) {
        try (Reader reader = open(path)) {
            return yaml(path, reader);
        } catch (IOException e) {
            throw new ContentException(path, 0, "cannot be read: " + e.getMessage());
        }
    }

    /** Reads YAML from anywhere; {@code name} is what messages call it. */
    public static Entry yaml(String name, Reader reader) {
        return entry(name, composed(name, reader));
    }

    /** Reads a YAML file whose values nest deeper than an {@link Entry} offers. */
    public static PlainEntry plain(String path) {
        try (Reader reader = open(path)) {
            return plain(path, reader);
        } catch (IOException e) {
            throw new ContentException(path, 0, "cannot be read: " + e.getMessage());
        }
    }

    /** Reads YAML as plain data from anywhere; {@code name} is what messages call it. */
    public static PlainEntry plain(String name, Reader reader) {
        return new PlainEntry(name, 1, composed(name, reader));
    }

    private static MappingNode composed(String name, Reader reader) {
        LoaderOptions options = new LoaderOptions();
        options.setAllowDuplicateKeys(false);
        try {
            Node top = new Yaml(options).compose(reader);
            if (!(top instanceof MappingNode map)) {
                throw new ContentException(name, 1, "the file must be a map of keys");
            }
            return map;
        } catch (MarkedYAMLException e) {
            throw problem(name, e);
        }
    }

    static ContentException problem(String name, MarkedYAMLException e) {
        int line = e.getProblemMark() == null ? 0 : e.getProblemMark().getLine() + 1;
        return new ContentException(name, line, String.valueOf(e.getProblem()));
    }

    /** Reads a CSV file with a header line; lines that begin with # are comments. */
    public static List<Entry> csv(String path) {
        try (Reader reader = open(path)) {
            return csv(path, reader);
        } catch (IOException e) {
            throw new ContentException(path, 0, "cannot be read: " + e.getMessage());
        }
    }

    /** Reads CSV from anywhere; {@code name} is what messages call it. */
    public static List<Entry> csv(String name, Reader reader) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).setCommentMarker('#').get();
        try (CSVParser parser = CSVParser.parse(reader, format)) {
            List<Entry> rows = new ArrayList<>();
            int width = parser.getHeaderNames().size();
            for (CSVRecord row : parser) {
                int line = (int) parser.getCurrentLineNumber();
                if (row.size() != width) {
                    throw new ContentException(name, line, "has " + row.size() + " columns, the header has " + width);
                }
                rows.add(new Entry(name, line, new LinkedHashMap<>(row.toMap())));
            }
            return rows;
        }
    }

    private static Reader open(String path) {
        InputStream in = Thread.currentThread().getContextClassLoader().getResourceAsStream("content/" + path);
        if (in == null) {
            in = Content.class.getClassLoader().getResourceAsStream("content/" + path);
        }
        if (in == null) {
            throw new ContentException(path, 0, "is missing from the content");
        }
        return new InputStreamReader(in, StandardCharsets.UTF_8);
    }

    private static Entry entry(String file, MappingNode map) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (NodeTuple pair : map.getValue()) {
            String key = ((ScalarNode) pair.getKeyNode()).getValue();
            if (values.put(key, value(file, pair.getValueNode())) != null) {
                throw new ContentException(file, line(pair.getKeyNode()), "'" + key + "' is written twice");
            }
        }
        return new Entry(file, line(map), values);
    }

    private static Object value(String file, Node node) {
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue();
        }
        if (node instanceof MappingNode map) {
            return entry(file, map);
        }
        List<Object> list = new ArrayList<>();
        for (Node item : ((SequenceNode) node).getValue()) {
            list.add(value(file, item));
        }
        return list;
    }

    static int line(Node node) {
        return node.getStartMark().getLine() + 1;
    }
}
