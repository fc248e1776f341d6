package org.steadwork.diary.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.steadwork.diary.rules.MissedVisit.Step.AGAIN;
import static org.steadwork.diary.rules.MissedVisit.Step.CONTACT;
import static org.steadwork.diary.rules.MissedVisit.Step.DECIDE;
import static org.steadwork.diary.rules.MissedVisit.Step.DONE;
import static org.steadwork.diary.rules.MissedVisit.Step.LETTER;
import static org.steadwork.diary.rules.MissedVisit.Step.OFFER;
import static org.steadwork.diary.rules.MissedVisit.Step.PHONE_TODAY;
import static org.steadwork.diary.rules.MissedVisit.Step.WAIT;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The steps after a missed visit, as the clinic's practice facts have them (did not attend, 1 to 3; common practice, no source). */
class MissedVisitTest {

    private static final MissedVisit.Rule RULE = new MissedVisit.Rule(2, 2, 3, 14);
    private static final LocalDate DAY = LocalDate.of(2030, 12, 2);

    @Test
    void aFirstMissIsFollowedByTwoRoutesAndANewDate() {
        assertEquals(CONTACT, first(false, List.of()).next(RULE, DAY));
        assertEquals(CONTACT, first(false, List.of(tried("phone", 0))).next(RULE, DAY));
        assertEquals(CONTACT, first(false, List.of(tried("phone", 0), tried("phone", 0))).next(RULE, DAY), "twice by one route is one route");
        assertEquals(AGAIN, first(false, List.of(tried("phone", 0), tried("text", 0))).next(RULE, DAY));
        assertEquals(OFFER, first(false, List.of(reached("phone", 0))).next(RULE, DAY));
        assertEquals(DONE, first(true, List.of(reached("phone", 0))).next(RULE, DAY));
        assertEquals(CONTACT, first(true, List.of()).next(RULE, DAY), "a later date that stood already does not say how the patient is");
    }

    @Test
    void anUrgentFlagIsPhonedWhateverElseWasDone() {
        for (List<MissedVisit.Try> tries : List.of(List.<MissedVisit.Try>of(), List.of(tried("phone", 0)), List.of(tried("phone", 0), reached("text", 0), tried("letter", 0)))) {
            assertEquals(PHONE_TODAY, new MissedVisit(DAY, 1, 1, true, true, tries).next(RULE, DAY), tries.toString());
            assertEquals(PHONE_TODAY, new MissedVisit(DAY, 4, 6, true, false, tries).next(RULE, DAY.plusDays(40)), tries.toString());
        }
        for (String spoken : List.of("phone", "contact_person", "doctor")) {
            assertEquals(OFFER, new MissedVisit(DAY, 1, 1, true, false, List.of(reached(spoken, 0))).next(RULE, DAY));
        }
    }

    @Test
    void theSecondInARowOrTheThirdInTheCaseGetsALetterAndFourteenDays() {
        List<MissedVisit.Try> two = List.of(tried("phone", 0), tried("text", 0));
        for (int[] counts : new int[][] {{2, 2}, {1, 3}, {3, 3}}) {
            assertEquals(CONTACT, repeated(counts, List.of()).next(RULE, DAY));
            assertEquals(LETTER, repeated(counts, two).next(RULE, DAY));
            assertEquals(LETTER, repeated(counts, List.of(reached("phone", 0))).next(RULE, DAY));
            List<MissedVisit.Try> written = Stream.concat(two.stream(), Stream.of(tried("letter", 1))).toList();
            assertEquals(WAIT, repeated(counts, written).next(RULE, DAY.plusDays(1)));
            assertEquals(WAIT, repeated(counts, written).next(RULE, DAY.plusDays(14)));
            assertEquals(DECIDE, repeated(counts, written).next(RULE, DAY.plusDays(15)));
            List<MissedVisit.Try> replied = Stream.concat(written.stream(), Stream.of(reached("phone", 5))).toList();
            assertEquals(OFFER, repeated(counts, replied).next(RULE, DAY.plusDays(20)));
        }
        assertEquals(AGAIN, repeated(new int[] {1, 2}, two).next(RULE, DAY), "the second in a case, not in a row, is not yet a letter");
    }

    private static MissedVisit first(boolean newDate, List<MissedVisit.Try> tries) {
        return new MissedVisit(DAY, 1, 1, false, newDate, tries);
    }

    private static MissedVisit repeated(int[] counts, List<MissedVisit.Try> tries) {
        return new MissedVisit(DAY, counts[0], counts[1], false, false, tries);
    }

    private static MissedVisit.Try tried(String route, int daysLater) {
        return new MissedVisit.Try(DAY.plusDays(daysLater), route, false);
    }

    private static MissedVisit.Try reached(String route, int daysLater) {
        return new MissedVisit.Try(DAY.plusDays(daysLater), route, true);
    }
}
