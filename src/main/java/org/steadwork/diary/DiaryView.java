package org.steadwork.diary;

import java.time.LocalDate;
import java.util.List;
import org.steadwork.casefile.Visit;
import org.steadwork.diary.rules.Span;
import org.steadwork.web.Option;

/**
 * A day or a week of the diary.
 *
 * @param whose   in a week, the value of the choice of clinician or room
 * @param columns clinicians, rooms, or days of one of them
 * @param called  appointments called off, and times given up
 * @param unbooked planned visits of these days that have no time
 * @param calendar where the calendar file is, or null
 */
record DiaryView(String title, String note, LocalDate day, boolean week, boolean byRoom, String whose, List<Option> choices, List<Column> columns,
        List<Appointment> called, List<Visit> unbooked, Ways ways, String calendar, Done done) {

    /** One column; {@code href} leads to the week of a clinician or room, or to the day. */
    record Column(String title, String note, String href, boolean today, List<Block> blocks) {

        public boolean empty() {
            return blocks.stream().noneMatch(block -> block.booked() || block.free());
        }

        /** Whether its blocks lie one after the other without gaps, each as long as its time. */
        public boolean sized() {
            return blocks.stream().allMatch(Block::sized);
        }
    }

    /** Where the links of the head lead. */
    record Ways(String before, String after, String today, String clinicians, String rooms, String other) {
    }

    /** What was done just now, and whether it can be undone. */
    record Done(long id, int version, String words, boolean undoable) {
    }

    public String step() {
        return week ? "week" : "day";
    }

    /** The classes that give all columns as many rows as the time shown has steps. */
    public String size() {
        return columns.stream().filter(Column::sized).map(Column::blocks).filter(blocks -> !blocks.isEmpty())
                .map(blocks -> new Span(blocks.get(0).span().from(), blocks.get(blocks.size() - 1).span().to())).map(Block::size).findFirst().orElse("");
    }

    public int booked() {
        return (int) columns.stream().flatMap(column -> column.blocks().stream()).filter(Block::booked).count();
    }
}
