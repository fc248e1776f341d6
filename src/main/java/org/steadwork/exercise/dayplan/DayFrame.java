package org.steadwork.exercise.dayplan;

import java.util.Comparator;
import java.util.List;

/**
 * The working day that breaks and exercises are laid on. Times are minutes after midnight, all on one day.
 *
 * @param from         start of work, [0, 1440)
 * @param to           end of work, after {@code from}, at most 1440
 * @param blocks       what stands already; within the day, none over another
 * @param longestSpell minutes of sitting without a break that are wanted at most, [20, 120]
 * @param breakMinutes minutes of a break, [5, 30]; a shorter one does not interrupt sitting
 * @param grid         breaks begin at multiples of so many minutes from the start of work, [5, 30]
 *
 *                     Source: 5 to 10 minutes after 50 to 60 minutes of screen work: HSE L26, guidance on the display screen
 *                     equipment regulations; the limits of the ranges: common practice, no source.
 */
public record DayFrame(int from, int to, List<FixedBlock> blocks, int longestSpell, int breakMinutes, int grid) {

    static final int LONGEST_DAY = 24 * 60;

    public DayFrame {
        if (!(from >= 0 && from < to && to <= LONGEST_DAY)) {
            throw new IllegalArgumentException("A working day runs forward within one day, but was " + from + " to " + to + " minutes after midnight");
        }
        if (!(longestSpell >= 20 && longestSpell <= 120)) {
            throw new IllegalArgumentException("The longest sitting spell is 20 to 120 minutes, but was " + longestSpell);
        }
        if (!(breakMinutes >= 5 && breakMinutes <= 30)) {
            throw new IllegalArgumentException("A break lasts 5 to 30 minutes, but was " + breakMinutes);
        }
        if (!(grid >= 5 && grid <= 30)) {
            throw new IllegalArgumentException("Breaks begin on steps of 5 to 30 minutes, but the step was " + grid);
        }
        blocks = blocks.stream().sorted(Comparator.comparingInt(FixedBlock::from)).toList();
        for (int i = 0; i < blocks.size(); i++) {
            FixedBlock block = blocks.get(i);
            if (block.from() < from || block.to() > to) {
                throw new IllegalArgumentException(block.label() + " lies outside the working day");
            }
            if (i > 0 && blocks.get(i - 1).to() > block.from()) {
                throw new IllegalArgumentException(block.label() + " begins before " + blocks.get(i - 1).label() + " ends");
            }
        }
    }

    /** Minutes from one moment to another that are sat beyond the longest spell, fixed times on the feet counted as breaks. */
    int satTooLong(int after, int until) {
        int beyond = 0;
        int sittingSince = after;
        for (FixedBlock block : blocks) {
            if (block.kind() != FixedBlock.Kind.MEETING && block.from() >= after && block.to() <= until) {
                beyond += Math.max(0, block.from() - sittingSince - longestSpell);
                sittingSince = block.to();
            }
        }
        return beyond + Math.max(0, until - sittingSince - longestSpell);
    }

    boolean isFree(int start, int end) {
        return start >= from && end <= to && blocks.stream().noneMatch(b -> b.touches(start, end));
    }
}
