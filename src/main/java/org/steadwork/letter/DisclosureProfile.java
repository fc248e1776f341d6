package org.steadwork.letter;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.letter.disclosure.Cell;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.letter.disclosure.Rule;

/** Puts a local habit over the general disclosure table. It may close more, and open what needs a tick; what never goes stays closed. */
final class DisclosureProfile {

    private DisclosureProfile() {
    }

    static Matrix over(Matrix general, String key) {
        return over(general, key, Content.yaml("letters/profiles.yaml"));
    }

    static Matrix over(Matrix general, String key, Entry file) {
        file.text("source");
        List<Entry> profiles = file.entries("profiles");
        Matrix chosen = null;
        for (Entry profile : profiles) {
            profile.text("label");
            Matrix matrix = changed(general, profile);
            chosen = profile.text("key").equals(key) ? matrix : chosen;
        }
        if (chosen == null) {
            throw new IllegalStateException("steadwork.letters.profile must be one of " + profiles.stream().map(one -> one.text("key")).toList()
                    + ", but is '" + key + "'");
        }
        return chosen;
    }

    private static Matrix changed(Matrix general, Entry profile) {
        Map<InformationCategory, Map<Recipient, Cell>> cells = new EnumMap<>(InformationCategory.class);
        Map<InformationCategory, String> labels = new EnumMap<>(InformationCategory.class);
        for (InformationCategory category : InformationCategory.values()) {
            Map<Recipient, Cell> row = new EnumMap<>(Recipient.class);
            for (Recipient recipient : Recipient.values()) {
                row.put(recipient, general.cell(category, recipient));
            }
            cells.put(category, row);
            labels.put(category, general.label(category));
        }
        for (Entry change : profile.entries("changes")) {
            change.text("tag");
            InformationCategory category = change.constant("category", InformationCategory.class);
            Recipient recipient = change.constant("recipient", Recipient.class);
            Cell before = general.cell(category, recipient);
            if (before.rule() == Rule.NEVER || recipient == Recipient.WORKER) {
                throw change.problem("'" + general.label(category) + "' to " + recipient.label() + " cannot be changed by a profile");
            }
            cells.get(category).put(recipient, new Cell(DisclosureContent.rule(change, "rule"), before.limit()));
        }
        return new Matrix(cells, labels);
    }
}
