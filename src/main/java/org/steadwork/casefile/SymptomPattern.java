package org.steadwork.casefile;

import java.util.Objects;
import org.steadwork.kernel.Answer;

/**
 * How the complaint behaves as a whole. Texts are null when nothing was noted.
 *
 * @param aggravating what makes it worse
 * @param easing      what eases it
 * @param ownWords    what the patient said
 */
public record SymptomPattern(CourseOverDay course, Answer nightWaking, Answer coughOrSneeze, String aggravating, String easing,
        String ownWords) {

    public SymptomPattern {
        Objects.requireNonNull(course, "course");
        Objects.requireNonNull(nightWaking, "nightWaking");
        Objects.requireNonNull(coughOrSneeze, "coughOrSneeze");
    }

    /** A pattern of which nothing was asked. */
    public static SymptomPattern notAsked() {
        return new SymptomPattern(CourseOverDay.NOT_ASKED, Answer.NOT_ASKED, Answer.NOT_ASKED, null, null, null);
    }
}
