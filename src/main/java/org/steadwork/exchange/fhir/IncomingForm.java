package org.steadwork.exchange.fhir;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/**
 * What was read from a file, as the preview carries it: the fields of a patient, each rating in a field of its own, and what to do.
 *
 * @param person {@code new}, the number of a patient who is known, or null when not said
 */
record IncomingForm(String person, List<IncomingBundle.Rating> ratings, String complaint) {

    private static final String RATING = "rating";
    private static final String TAKEN = "take";
    private static final int MOST = 400;

    /** A rating on the page. */
    public record Line(int index, String day, String pain, String place, String value, boolean taken) {
    }

    static Form show(IncomingBundle read) {
        IncomingBundle.Person person = read.person();
        Form form = Form.empty().with("givenName", person.givenName()).with("familyName", person.familyName())
                .with("birthDate", person.birthDate() == null ? null : Dates.shown(person.birthDate())).with("sex", person.sex()).with("phone", person.phone())
                .with("email", person.email()).with("address", person.address()).with("complaint", "");
        List<String> taken = new ArrayList<>();
        List<String> all = new ArrayList<>();
        for (IncomingBundle.Rating rating : read.ratings()) {
            taken.add(String.valueOf(all.size()));
            all.add(rating.on() + "|" + rating.pain() + "|" + (rating.place() == null ? "" : rating.place().replace('|', '/')));
        }
        return form.withAll(RATING, all).withAll(TAKEN, taken);
    }

    static List<Line> lines(Form form) {
        List<Line> lines = new ArrayList<>();
        List<String> all = form.values(RATING);
        for (int i = 0; i < Math.min(MOST, all.size()); i++) {
            int at = i;
            rating(all.get(i)).ifPresent(rating -> lines.add(new Line(at, Dates.shown(rating.on()), rating.pain() + " of 10", rating.place(), all.get(at),
                    form.is(TAKEN, String.valueOf(at)))));
        }
        return lines;
    }

    static IncomingForm read(Form form, LocalDate today) {
        List<IncomingBundle.Rating> ratings = new ArrayList<>();
        Set<LocalDate> days = new HashSet<>();
        for (Line line : lines(form)) {
            if (line.taken()) {
                IncomingBundle.Rating rating = rating(line.value()).orElseThrow();
                if (rating.on().isAfter(today)) {
                    form.error("ratings", "A rating of " + Dates.shown(rating.on()) + " lies in the future. Untick it.");
                } else if (!days.add(rating.on())) {
                    form.error("ratings", "There are two ratings of " + Dates.shown(rating.on()) + ". One a day can be kept: untick the other.");
                }
                ratings.add(rating);
            }
        }
        String person = form.value("person").matches("new|\\d{1,12}") ? form.value("person") : null;
        String complaint = form.text("complaint", 200);
        boolean opens = !ratings.isEmpty() && (person == null || person.equals("new"));
        if (opens && complaint == null && form.error("complaint") == null) {
            form.error("complaint", "Ratings of a new patient need a case: enter its complaint, or untick the ratings.");
        }
        return new IncomingForm(person, ratings, complaint);
    }

    Optional<Long> known() {
        return Optional.ofNullable(person).filter(one -> !one.equals("new")).map(Long::valueOf);
    }

    private static Optional<IncomingBundle.Rating> rating(String written) {
        String[] parts = written.split("\\|", 3);
        try {
            int pain = parts.length == 3 && parts[1].matches("\\d|10") ? Integer.parseInt(parts[1]) : -1;
            return pain < 0 ? Optional.empty() : Optional.of(new IncomingBundle.Rating(LocalDate.parse(parts[0]), pain, parts[2].isBlank() ? null : parts[2]));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
