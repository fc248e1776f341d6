package org.steadwork.casemap;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steadwork.casefile.CardKey;
import org.steadwork.casefile.CardKind;
import org.steadwork.casefile.Link;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** The two cards a decision is about; null while one is not chosen or does not exist. */
record TieForm(CardKey from, CardKey to) {

    static TieForm of(String from, String to) {
        return new TieForm(read(from), read(to));
    }

    private static CardKey read(String text) {
        return text == null ? null : CardKey.parse(text).orElse(null);
    }

    boolean complete() {
        return from != null && to != null && Link.joins(from.kind(), to.kind());
    }

    /** The form as it stands before anything is typed. */
    Form form(Optional<Link> known) {
        return Form.empty().with("from", from == null ? null : from.text()).with("to", to == null ? null : to.text())
                .with("version", known.map(link -> String.valueOf(link.version())).orElse(""))
                .with("reason", known.map(Link::reason).orElse(null))
                .with("decision", known.map(link -> link.decision().name().toLowerCase(Locale.ROOT)).orElse(null));
    }

    /** Notes what is wrong with the two cards; a pair that was decided before may be decided anew although a card is gone. */
    void check(Form form, MapBuilder map, Optional<Link> known) {
        if (known.isPresent()) {
            return;
        }
        checkCard(form, "from", "first", from, map);
        checkCard(form, "to", "second", to, map);
        if (!form.hasErrors() && !complete()) {
            form.error("to", "A tie joins a symptom with a finding, or a finding with an action.");
        }
    }

    private static void checkCard(Form form, String field, String which, CardKey key, MapBuilder map) {
        if (key == null || map.titleOf(key).isEmpty()) {
            form.error(field, "Choose the " + which + " card from those on the map.");
        }
    }

    static List<Option> fromOptions(MapBuilder map) {
        List<Option> options = options(map, CardKind.SYMPTOM);
        options.addAll(options(map, CardKind.FINDING));
        return options;
    }

    static List<Option> toOptions(MapBuilder map) {
        List<Option> options = options(map, CardKind.FINDING);
        options.addAll(options(map, CardKind.ACTION));
        return options;
    }

    private static List<Option> options(MapBuilder map, CardKind kind) {
        List<Option> options = new ArrayList<>();
        map.column(kind).forEach(cell -> options.add(new Option(cell.card().key().text(), cell.title() + " (" + kind.label() + ")")));
        return options;
    }
}
