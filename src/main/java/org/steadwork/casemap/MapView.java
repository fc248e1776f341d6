package org.steadwork.casemap;

import io.quarkus.qute.RawString;
import java.util.List;
import org.steadwork.casefile.MapCard;
import org.steadwork.casefile.MapMeasure;
import org.steadwork.casefile.NextStep;

/**
 * The map as its page shows it.
 *
 * @param rows     rows of the tallest column, at least 1; the threads are drawn over that many
 * @param ties     undecided ones first, by rank, then the confirmed
 * @param more     how many further candidates are not shown until some of these are decided
 * @param nextStep what is most pressing in this case by the rules of Today, or null
 * @param main     the measure of the main complaint, or null
 */
record MapView(List<Cell> symptoms, List<Cell> findings, List<Cell> actions, int rows, List<Thread> left, List<Thread> right,
        List<Tie> ties, List<Tie> rejected, int more, NextStep nextStep, Figure main, List<Figure> others) {

    /**
     * A card in its place.
     *
     * @param label 1, 2 … for symptoms, A, B … for findings, a, b … for actions; empty for a finding in range
     * @param ties  what it is tied with, in words
     */
    record Cell(String label, MapCard card, String ties) {

        public String title() {
            return label.isEmpty() ? card.title() : label + " " + card.title();
        }
    }

    /** A line between two columns, in units of 100 a row; both ends are dots. */
    record Thread(String path, String start, String end, boolean confirmed) {

        static Thread between(int fromRow, int toRow, boolean confirmed) {
            int a = fromRow * 100 + 50;
            int b = toRow * 100 + 50;
            return new Thread("M0," + a + " C50," + a + " 50," + b + " 100," + b, "M0," + a + " h0.01", "M100," + b + " h0.01", confirmed);
        }
    }

    /** A measure with its drawn trend. */
    record Figure(MapMeasure measure, RawString drawing, String alternative) {
    }

    public int height() {
        return rows * 100;
    }

    public boolean empty() {
        return symptoms.isEmpty() && findings.isEmpty() && actions.isEmpty();
    }

    public long open() {
        return ties.stream().filter(Tie::open).count();
    }

    public long confirmed() {
        return ties.size() - open();
    }

    public int tieable() {
        return Math.min(symptoms.size(), findings.size()) + Math.min(findings.size(), actions.size());
    }
}
