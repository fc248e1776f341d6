package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.letter.pdf.Paper;

/**
 * The clinic's own words for letters, in the folder {@code letters} of its data folder: {@code letterhead.yaml}, and in
 * {@code kinds} one file for a kind whose title, headings, hints or first words differ. Read and checked at the start; a wrong entry
 * stops it with file, line and reason. Words that must stay can be put otherwise and not taken out.
 */
@ApplicationScoped
class ClinicWording {

    private static final Set<String> LETTERHEAD = Set.of("name", "address", "phone", "foot", "paper");
    private static final Set<String> KIND = Set.of("title", "offer", "sections");
    private static final Set<String> SECTION = Set.of("key", "heading", "hint", "start");

    @ConfigProperty(name = "steadwork.data-folder")
    String dataFolder;

    /** Returns the letterhead file, if the clinic has one. */
    Optional<Entry> letterhead() {
        Optional<Entry> file = read(folder().resolve("letterhead.yaml"));
        file.ifPresent(entry -> {
            only(entry, LETTERHEAD);
            if (entry.has("paper")) {
                entry.constant("paper", Paper.class);
            }
        });
        return file;
    }

    /** Returns a kind in the clinic's words; the kind itself where it has none of its own. */
    LetterKind reworded(LetterKind kind) {
        return read(folder().resolve("kinds").resolve(kind.key() + ".yaml")).map(words -> apply(kind, words)).orElse(kind);
    }

    /** Returns the names of files for kinds that do not exist, which are slips. */
    List<String> strays(Set<String> known) {
        Path kinds = folder().resolve("kinds");
        if (!Files.isDirectory(kinds)) {
            return List.of();
        }
        try (var files = Files.list(kinds)) {
            return files.map(file -> file.getFileName().toString()).filter(name -> !name.endsWith(".yaml") || !known.contains(name.replace(".yaml", ""))).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static LetterKind apply(LetterKind kind, Entry words) {
        only(words, KIND);
        Map<String, SectionKind> changed = new HashMap<>();
        for (Entry row : words.entries("sections")) {
            only(row, SECTION);
            SectionKind section = kind.section(row.text("key")).orElseThrow(() -> row.problem("'" + kind.key() + "' has no section '" + row.text("key") + "'"));
            if (changed.put(section.key(), section(section, row)) != null) {
                throw row.problem("'" + section.key() + "' is written twice");
            }
        }
        return new LetterKind(kind.key(), words.optionalText("title").orElse(kind.title()), words.optionalText("offer").orElse(kind.offer()), kind.recipients(),
                kind.gate(), kind.seenFirst(), kind.suspendedBy(), kind.endsCare(), kind.maxPages(), kind.readingGrade(), kind.must(), kind.mustNot(),
                kind.sections().stream().map(section -> changed.getOrDefault(section.key(), section)).toList());
    }

    private static SectionKind section(SectionKind section, Entry row) {
        String start = row.optionalText("start").orElse(section.start());
        LetterKinds.requireKnownValues(row, start);
        if (!section.lostFrom(start).isEmpty()) {
            throw row.problem("'" + section.key() + "' can be reworded, not taken out: it must still say " + section.lostFrom(start));
        }
        return new SectionKind(section.key(), row.optionalText("heading").orElse(section.heading()), section.information(), section.required(),
                row.optionalText("hint").orElse(section.hint()), start, section.columns(), section.drawing(), section.needsTick(), section.standing(),
                section.keeps());
    }

    private static void only(Entry entry, Set<String> keys) {
        List<String> unknown = new ArrayList<>(new HashSet<>(entry.keys()));
        unknown.removeAll(keys);
        if (!unknown.isEmpty()) {
            throw entry.problem("knows no " + unknown + " here, only " + keys.stream().sorted().toList());
        }
    }

    private Path folder() {
        return Path.of(dataFolder).resolve("letters");
    }

    private static Optional<Entry> read(Path file) {
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
