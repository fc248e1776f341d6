package org.steadwork.letter;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steadwork.letter.disclosure.Cell;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.web.Option;

/**
 * What the worker is asked to agree to for one reader.
 *
 * @param goes  what goes with the consent
 * @param ticks what needs a tick of its own
 * @param never what the clinic never sends there
 */
public record ConsentOffer(String reader, String readerKey, List<String> goes, List<Option> ticks, List<String> never, String shownText) {

    static ConsentOffer of(Matrix matrix, LetterReader reader, String patient) {
        List<String> goes = new ArrayList<>();
        List<Option> ticks = new ArrayList<>();
        List<String> never = new ArrayList<>();
        for (InformationCategory category : InformationCategory.values()) {
            Cell cell = matrix.cell(category, reader.kind());
            String label = matrix.label(category) + (cell.limit().isEmpty() ? "" : " (" + cell.limit() + ")");
            switch (cell.rule()) {
                case ALLOWED -> goes.add(label);
                case EXPLICIT -> ticks.add(new Option(category.name(), label));
                case NEVER -> never.add(label);
            }
        }
        String shown = "The clinic may write to " + reader.name() + " about " + patient + ". This goes with the agreement: " + lower(goes)
                + ". This goes only if ticked: " + (ticks.isEmpty() ? "nothing more" : lower(ticks.stream().map(Option::label).toList()))
                + (never.isEmpty() ? "" : ". This never goes there from the clinic: " + lower(never))
                + ". The agreement can be withdrawn at any time, without a reason; what was sent before cannot be called back. Treatment goes on either way."
                + " Without it the reader will act without the clinic’s advice.";
        return new ConsentOffer(reader.name(), reader.key(), goes, ticks, never, shown);
    }

    private static String lower(List<String> labels) {
        return String.join(", ", labels).toLowerCase(Locale.ROOT);
    }
}
