package org.steadwork.caseload.statistics;

import java.util.ArrayDeque;
import java.util.Arrays;

/**
 * How far each hidden cell of a table with totals can be pinned down by subtraction. Rows and columns, totals among them, are the nodes of
 * a network and cells its arcs: whatever one may change without disturbing anything shown is a flow around a circle of hidden cells, so
 * the least and the greatest value are two greatest flows. Exact, and all whole numbers between them are possible too.
 *
 * <p>Source: a table with two ways as a network, Cox 1980, J Am Stat Assoc 75:377 (from memory); greatest flow along shortest paths,
 * Edmonds and Karp 1972.
 */
final class HiddenRanges {

    /** More than any count: no limit. */
    static final int FREELY = 1 << 28;

    private final int rowNodes;
    private final int columnNodes;
    private final int[][] capacity;

    /** Starts with everything shown: nothing can change. The table's size counts the totals. */
    HiddenRanges(int rowsWithTotal, int columnsWithTotal) {
        rowNodes = rowsWithTotal;
        columnNodes = columnsWithTotal;
        capacity = new int[rowNodes + columnNodes][rowNodes + columnNodes];
    }

    /** Hides a cell that may be greater by up and less by down than it is. */
    void hide(int row, int column, int up, int down) {
        capacity[tail(row, column)][head(row, column)] = up;
        capacity[head(row, column)][tail(row, column)] = down;
    }

    /** Returns whether a hidden cell could have at least so many different values. */
    boolean canTake(int row, int column, int values) {
        int tail = tail(row, column);
        int head = head(row, column);
        int[][] others = Arrays.stream(capacity).map(int[]::clone).toArray(int[][]::new);
        others[tail][head] = 0;
        others[head][tail] = 0;
        int needed = values - 1;
        int up = flow(others, head, tail, Math.min(needed, capacity[tail][head]));
        return up >= needed || up + flow(others, tail, head, Math.min(needed - up, capacity[head][tail])) >= needed;
    }

    // a total balances the cells of its line: its arc runs the other way, the grand total's the same way again
    private int tail(int row, int column) {
        return runsFromRow(row, column) ? row : rowNodes + column;
    }

    private int head(int row, int column) {
        return runsFromRow(row, column) ? rowNodes + column : row;
    }

    private boolean runsFromRow(int row, int column) {
        return (row == rowNodes - 1) == (column == columnNodes - 1);
    }

    private static int flow(int[][] capacity, int from, int to, int enough) {
        int[][] left = Arrays.stream(capacity).map(int[]::clone).toArray(int[][]::new);
        int flow = 0;
        while (flow < enough) {
            int[] before = shortestPath(left, from, to);
            if (before[to] < 0) {
                return flow;
            }
            int most = enough - flow;
            for (int node = to; node != from; node = before[node]) {
                most = Math.min(most, left[before[node]][node]);
            }
            for (int node = to; node != from; node = before[node]) {
                left[before[node]][node] -= most;
                left[node][before[node]] += most;
            }
            flow += most;
        }
        return flow;
    }

    /** The node before each on a shortest path, −1 where there is none. */
    private static int[] shortestPath(int[][] left, int from, int to) {
        int[] before = new int[left.length];
        Arrays.fill(before, -1);
        before[from] = from;
        ArrayDeque<Integer> waiting = new ArrayDeque<>();
        waiting.add(from);
        while (!waiting.isEmpty() && before[to] < 0) {
            int node = waiting.remove();
            for (int next = 0; next < left.length; next++) {
                if (before[next] < 0 && left[node][next] > 0) {
                    before[next] = node;
                    waiting.add(next);
                }
            }
        }
        return before;
    }
}
