package org.steadwork.letter;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.steadwork.letter.disclosure.Cell;
import org.steadwork.letter.disclosure.Gate;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.letter.disclosure.Rule;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** What the page of one draft shows beside the case's own head. */
public record LetterView(String path, String title, String to, String readerKey, int version, String saved, List<Part> parts,
                         List<Integer> pages, List<Check> checks, List<Row> rows, List<Draft.HeldBack> heldBack, List<LetterEvent> events,
                         boolean stopped, boolean mayOverride, boolean mustBeSeen, DisclosureOverride override, List<String> must, List<String> mustNot) {

    /**
     * One section as it is written: open while there is something to do in it.
     *
     * @param first   its first words, shown while it is closed
     * @param reasons what the case file gave to it, and why it may be there
     */
    public record Part(LetterForm.Field field, boolean open, boolean toFill, String first, String rule, List<Draft.Included> reasons) {
    }

    /** One line of the table of what the reader may have. */
    public record Row(String label, String rule, String ticked, String inLetter) {
    }

    private static final int FIRST_WORDS = 60;

    static LetterView of(Desk desk, Matrix matrix, Form form) {
        Letter letter = desk.letter();
        LetterKind kind = desk.kind();
        boolean overridable = kind.gate() == LetterKind.GateRule.CONSENT_OR_OVERRIDE
                && letter.reader().kind().needsConsent() && desk.gate() != Gate.IN_FORCE && desk.override().isEmpty();
        return new LetterView(path(letter), kind.title(), letter.reader().name(), letter.reader().key(), letter.version(),
                Dates.shown(letter.savedAt()) + " by " + letter.savedBy().displayName() + ", version " + letter.version(),
                parts(desk, matrix, form), IntStream.rangeClosed(1, desk.file().pages()).boxed().toList(), desk.checks(),
                rows(desk, matrix), desk.heldBack(), desk.events(), desk.stopped(), overridable,
                kind.seenFirst() == LetterKind.SeenFirst.REQUIRED && letter.reader().kind().needsConsent(), desk.override().orElse(null), kind.must(), kind.mustNot());
    }

    static String path(Letter letter) {
        return "/cases/" + letter.caseFile().id() + "/letters/" + letter.number();
    }

    /** Returns the checks that want something. */
    public List<Check> wanting() {
        return checks.stream().filter(check -> check.level() != Check.Level.HOLDS).toList();
    }

    public List<Check> holding() {
        return checks.stream().filter(check -> check.level() == Check.Level.HOLDS).toList();
    }

    public List<Check> asked() {
        return checks.stream().filter(Check::asks).toList();
    }

    /** Says how the checks stand, in a few words. */
    public String standing() {
        long holds = checks.stream().filter(check -> check.level() == Check.Level.HOLDS).count();
        long stop = checks.stream().filter(Check::stops).count();
        long rest = checks.size() - holds - stop;
        return holds + " hold" + (rest == 0 ? "" : ", " + rest + " to look at") + (stop == 0 ? "" : ", " + stop + " in the way");
    }

    /** True when what was typed belongs to the record of an override, so that it is shown. */
    public boolean overrideOpen(Form form) {
        return form.has("ground") || form.has("decidedBy") || form.has("groundText") || form.hasErrors() && form.error("ground") != null;
    }

    public List<Option> answers() {
        return Option.of(LetterEvent.Kind.class, LetterEvent.Kind::label).subList(0, 4);
    }

    private static List<Part> parts(Desk desk, Matrix matrix, Form form) {
        List<Part> parts = new ArrayList<>();
        for (SectionKind section : desk.sections()) {
            LetterForm.Field field = LetterForm.field(section, form);
            String text = form.value(field.name()).replace('\t', ' ').strip();
            boolean toFill = section.required() && text.isEmpty() || TextChecks.placeholder(text);
            String first = text.lines().findFirst().orElse("");
            parts.add(new Part(field, toFill || field.problem() != null || field.stored() != null, toFill,
                    first.length() > FIRST_WORDS ? first.substring(0, FIRST_WORDS) + "…" : first,
                    matrix.label(section.information()) + ": " + matrix.cell(section.information(), desk.letter().reader().kind()).rule().label(),
                    desk.included().stream().filter(one -> one.section().equals(section.key())).toList()));
        }
        return parts;
    }

    private static List<Row> rows(Desk desk, Matrix matrix) {
        Recipient recipient = desk.letter().reader().kind();
        List<Row> rows = new ArrayList<>();
        for (InformationCategory category : InformationCategory.values()) {
            Cell cell = matrix.cell(category, recipient);
            boolean ticked = desk.consent().map(consent -> consent.ticked().contains(category)).orElse(false);
            boolean open = cell.rule() == Rule.ALLOWED || cell.rule() == Rule.EXPLICIT && ticked;
            boolean used = desk.sections().stream().anyMatch(section -> section.information() == category
                    && !desk.letter().texts().getOrDefault(section.key(), "").isBlank());
            String rule = cell.rule().label() + (cell.limit().isEmpty() ? "" : ", " + cell.limit());
            String inLetter = cell.rule() == Rule.NEVER ? "cannot be put in" : used && open ? "yes" : open ? "nothing yet" : "left out";
            rows.add(new Row(matrix.label(category), rule, cell.rule() != Rule.EXPLICIT ? "–" : ticked ? "yes" : "no", inLetter));
        }
        return rows;
    }
}
