package org.steadwork.letter;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.letter.LetterKind.GateRule;
import org.steadwork.letter.LetterKind.SeenFirst;
import org.steadwork.letter.disclosure.Cell;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.letter.disclosure.Rule;

/** Reads the kinds of letter from the content and checks them: what must be in a letter is there, what never may be is not. */
final class LetterKinds {

    private static final Pattern VALUE = Pattern.compile("\\{([a-z_]+)}");

    private final Map<String, LetterKind> kinds = new LinkedHashMap<>();

    private LetterKinds() {
    }

    static LetterKinds read(Matrix matrix) {
        return read(matrix, kind -> kind);
    }

    /** @param wording puts each kind into the clinic's own words */
    static LetterKinds read(Matrix matrix, UnaryOperator<LetterKind> wording) {
        LetterKinds all = new LetterKinds();
        Entry index = Content.yaml("letters/kinds/index.yaml");
        for (String key : index.texts("kinds")) {
            LetterKind kind = kind(Content.yaml("letters/kinds/" + key + ".yaml"), matrix);
            if (!kind.key().equals(key) || all.kinds.put(key, wording.apply(kind)) != null) {
                throw index.problem("'" + key + "' must be the key of one file of that name");
            }
        }
        return all;
    }

    Collection<LetterKind> all() {
        return kinds.values();
    }

    Optional<LetterKind> find(String key) {
        return Optional.ofNullable(kinds.get(key));
    }

    static LetterKind kind(Entry file, Matrix matrix) {
        file.text("source");
        Set<Recipient> recipients = EnumSet.noneOf(Recipient.class);
        for (String name : file.texts("recipients")) {
            recipients.add(constant(file, name));
        }
        if (recipients.isEmpty()) {
            throw file.problem("names no reader");
        }
        List<SectionKind> sections = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        for (Entry row : file.entries("sections")) {
            SectionKind section = section(row);
            if (!keys.add(section.key())) {
                throw row.problem("'" + section.key() + "' is written twice");
            }
            requireDisclosable(row, section, recipients, matrix);
            sections.add(section);
        }
        requireStanding(file, sections, recipients);
        int maxPages = file.integer("max_pages");
        if (maxPages < 1) {
            throw file.problem("'max_pages' must be 1 or more");
        }
        return new LetterKind(file.text("key"), file.text("title"), file.text("offer"), recipients,
                file.constant("gate", GateRule.class), file.constant("seen_first", SeenFirst.class),
                Set.copyOf(file.texts("suspended_by")), file.flag("ends_care"), maxPages,
                file.has("reading_grade") ? OptionalInt.of(file.integer("reading_grade")) : OptionalInt.empty(), file.texts("must"), file.texts("must_not"), sections);
    }

    private static SectionKind section(Entry row) {
        Optional<Standing> standing = row.has("standing") ? Optional.of(row.constant("standing", Standing.class)) : Optional.empty();
        String start = row.optionalText("start").orElse("");
        SectionKind section = new SectionKind(row.text("key"), row.text("heading"), row.constant("information", InformationCategory.class),
                row.flag("required") || standing.isPresent(), row.optionalText("hint").orElse(""), start, row.texts("columns"),
                row.has("drawing") ? Optional.of(row.constant("drawing", SectionKind.Drawn.class)) : Optional.empty(), row.flag("needs_tick"), standing,
                row.texts("keeps"));
        requireKnownValues(row, start);
        if (standing.isPresent()) {
            if (section.keeps().isEmpty()) {
                throw row.problem("words that must stay need 'keeps': the phrases a rewording must still hold");
            }
            if (start.isEmpty() || !section.lostFrom(start).isEmpty()) {
                throw row.problem("'start' must hold " + section.keeps());
            }
        }
        return section;
    }

    static void requireKnownValues(Entry row, String start) {
        Matcher values = VALUE.matcher(start);
        while (values.find()) {
            if (!CaseValues.NAMES.contains(values.group(1))) {
                throw row.problem("knows no value {" + values.group(1) + "}, only " + CaseValues.NAMES);
            }
        }
    }

    private static void requireDisclosable(Entry row, SectionKind section, Set<Recipient> recipients, Matrix matrix) {
        if (RecordFacts.NAMES_READERS.contains(section.key()) && !recipients.equals(Set.of(Recipient.WORKER))) {
            throw row.problem("'" + section.key() + "' names other readers and is for the worker alone");
        }
        for (Recipient recipient : recipients) {
            Cell cell = matrix.cell(section.information(), recipient);
            if (cell.rule() == Rule.NEVER) {
                throw row.problem("'" + matrix.label(section.information()) + "' never goes to " + recipient.label());
            }
            if (cell.rule() == Rule.EXPLICIT && section.required() && !section.needsTick()) {
                throw row.problem("a section that needs a tick cannot be required");
            }
        }
    }

    private static void requireStanding(Entry file, List<SectionKind> sections, Set<Recipient> recipients) {
        Set<Standing> missing = Standing.requiredFor(recipients);
        sections.forEach(section -> section.standing().ifPresent(missing::remove));
        if (!missing.isEmpty()) {
            throw file.problem("must carry " + missing.toString().toLowerCase(Locale.ROOT) + ": it can be reworded, not removed");
        }
    }

    private static Recipient constant(Entry file, String name) {
        for (Recipient recipient : Recipient.values()) {
            if (recipient.name().equalsIgnoreCase(name)) {
                return recipient;
            }
        }
        throw file.problem("knows no reader '" + name + "'");
    }
}
