package org.steadwork.ownpage;

import java.util.List;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Form;

/**
 * The report before a visit as the patient fills it in.
 *
 * @param zones      where it hurt at the last report
 * @param activities what the patient named as hard
 * @param now        warning signs that call for the emergency number
 * @param today      warning signs that call for a phone call the same day
 */
record OwnReportView(CaseFile file, Form form, List<Asked> zones, List<Asked> activities, List<Sign> now, List<Sign> today) {

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

    /** The three questions about pain, by the end of their field's name. */
    public List<Asked> scales() {
        return List.of(new Asked("now_", "Pain now"), new Asked("worst_", "Worst pain of the last week"), new Asked("average_", "Usual pain of the last week"));
    }

    public List<Integer> numbers() {
        return List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
    }
}
