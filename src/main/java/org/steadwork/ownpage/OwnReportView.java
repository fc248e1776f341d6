package org.steadwork.ownpage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.steadwork.casefile.CaseFile;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Item;
import org.steadwork.outcome.scoring.PhoneWords;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/**
 * The report before a visit as the patient fills it in.
 *
 * @param sending        names this sending, so that it is taken once however often it arrives
 * @param zones          where it hurt at the last report
 * @param activities     what the patient named as hard
 * @param questionnaires what is due by its schedule and may be asked on a phone
 * @param waiting        headings of questionnaires that were answered and wait for a clinician
 * @param now            warning signs that call for the emergency number
 * @param today          warning signs that call for a phone call the same day
 */
record OwnReportView(CaseFile file, LocalDate day, Form form, String sending, List<Asked> zones, List<Asked> activities, List<Questionnaire> questionnaires, List<String> waiting,
        List<Sign> now, List<Sign> today) {

    /** Something to give numbers for. */
    record Asked(String key, String label) {

        /** Field of this question about a place. */
        public String named(Asked place) {
            return key + place.key();
        }

        /** Field of the rating of this activity. */
        public String activityName() {
            return "activity_" + key;
        }
    }

    /** A warning sign; its key is its place among those shown. */
    record Sign(String key, String words) {
    }

    /** One question of a questionnaire, with its field. */
    record Question(String name, String words, int least, int most) {

        public List<Answer> answers() {
            return IntStream.rangeClosed(least, most).mapToObj(number -> new Answer(String.valueOf(number), least < 0 && number > 0 ? "+" + number : String.valueOf(number).replace('-', '−'))).toList();
        }
    }

    /** A number to choose, and how it is written. */
    record Answer(String value, String label) {
    }

    /** A questionnaire in the words of the content. */
    record Questionnaire(Instrument instrument, List<Question> questions) {

        static Questionnaire of(Instrument instrument, LocalDate start) {
            List<Question> questions = new ArrayList<>();
            for (Item item : instrument.items()) {
                questions.add(new Question(field(instrument, item), instrument.onPhone().orElseThrow().ask(item.number(), Dates.shown(start)), item.min(), item.max()));
            }
            return new Questionnaire(instrument, questions);
        }

        static String field(Instrument instrument, Item item) {
            return "q_" + instrument.key() + "_" + item.number();
        }

        public PhoneWords words() {
            return instrument.onPhone().orElseThrow();
        }
    }

    /** The three questions about pain, by the end of their field's name. */
    public List<Asked> scales() {
        return List.of(new Asked("now_", "Pain now"), new Asked("worst_", "Worst pain of the last week"), new Asked("average_", "Usual pain of the last week"));
    }

    public List<Integer> numbers() {
        return List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
    }
}
