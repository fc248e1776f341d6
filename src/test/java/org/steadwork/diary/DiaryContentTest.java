package org.steadwork.diary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.smallrye.config.SmallRyeConfigBuilder;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.config.Config;
import org.junit.jupiter.api.Test;
import org.steadwork.casefile.VisitKind;
import org.steadwork.content.Content;
import org.steadwork.content.ContentException;
import org.steadwork.diary.rules.MissedVisit;
import org.steadwork.diary.rules.Span;

/** The content of the diary against the clinic's practice facts (visits: initial 45-60, follow-up 20-30, work place 45-90, discharge 20-30 minutes). */
class DiaryContentTest {

    private static Config settings(Map<String, String> values) {
        SmallRyeConfigBuilder builder = new SmallRyeConfigBuilder();
        values.forEach(builder::withDefaultValue);
        return builder.build();
    }

    @Test
    void visitsTakeAsLongAsThePracticeFactsSay() {
        DiaryContent content = new DiaryContent(settings(Map.of()));
        Map.of(VisitKind.INITIAL, 60, VisitKind.FOLLOW_UP, 30, VisitKind.WORK_PLACE, 90, VisitKind.DISCHARGE, 30)
                .forEach((kind, minutes) -> assertEquals(minutes, content.length(kind).minutes(), kind.name()));
        assertEquals(24, content.lateCancelHours());
        assertEquals(48, content.reminderHours());
        assertEquals(2, content.reviewDaysAround());
    }

    @Test
    void aClinicSetsLengthsAndHoursOfItsOwnAndOneOffTheGridStopsTheStart() {
        DiaryContent content = new DiaryContent(settings(Map.of("steadwork.diary.minutes.work-place", "75", "steadwork.diary.reminder-hours", "72")));
        assertEquals(75, content.length(VisitKind.WORK_PLACE).minutes());
        assertEquals(72, content.reminderHours());
        for (String wrong : List.of("33", "0", "500")) {
            ContentException stopped = assertThrows(ContentException.class, () -> new DiaryContent(settings(Map.of("steadwork.diary.minutes.initial", wrong))));
            assertTrue(stopped.getMessage().contains("steadwork.diary.minutes.initial"), stopped.getMessage());
        }
    }

    @Test
    void theStepsAfterAMissedVisitAreThereWithTheirSources() {
        MissedContent content = new MissedContent(Content.yaml("diary/did-not-attend.yaml"));
        assertEquals(2, content.rule().routesSameDay());
        assertEquals(2, content.rule().inARow());
        assertEquals(3, content.rule().inEpisode());
        assertEquals(14, content.rule().daysToReply());
        assertEquals("The clinician asks for it.", content.words(MissedVisit.Step.PHONE_TODAY).desk());
    }

    @Test
    void hoursAreReadAsTypedAndKeptAsTheyWereMeant() {
        WeekColumn column = new WeekColumn();
        Map<DayOfWeek, List<Span>> week = Map.of(DayOfWeek.MONDAY, WeekColumn.read("13:30–17, 9-12:30"), DayOfWeek.SUNDAY, List.of());
        assertEquals("monday 09:00-12:30, 13:30-17:00", column.convertToDatabaseColumn(week));
        assertEquals(Map.of(DayOfWeek.MONDAY, List.of(new Span(540, 750), new Span(810, 1020))), column.convertToEntityAttribute("monday 09:00-12:30, 13:30-17:00"));
        assertEquals(Map.of(), column.convertToEntityAttribute(""));
        for (String wrong : List.of("9", "12-9", "9-12, 11-13", "9:02-10", "nine to five", "9-10-11")) {
            assertThrows(IllegalArgumentException.class, () -> WeekColumn.read(wrong), wrong);
        }
    }
}
