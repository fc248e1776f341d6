package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Where each frame lies in the picture of 240 by 200 units, and how large the figure is drawn. */
final class Layout {

    static final double WIDTH = 240;
    static final double HEIGHT = 200;
    private static final double STACK_FROM_ASPECT = 1.35;
    private static final double GAP = 3;
    private static final double NUMBER_COLUMN = 26;
    private static final double NUMBER_ROW = 24;
    private static final double FINE_LINES_BELOW_SCALE = .9;

    private enum Form { ROW, STACK, GRID }

    /** The box of a frame in the picture. */
    record Cell(double x, double y, double width, double height) {
    }

    private final FigureData figure;
    private final Extent extent;
    private final Form form;
    private final List<Cell> cells;
    private final double scale;

    Layout(FigureData figure, List<Skeleton> skeletons) {
        this.figure = figure;
        this.extent = Extent.of(figure, skeletons);
        this.form = form();
        int n = figure.frames();
        if (form == Form.ROW && !isWindow()) {
            double width = Arrays.stream(extent.widths()).sum();
            scale = Math.min((WIDTH - 2 * GAP * n) / width, (HEIGHT - NUMBER_ROW - GAP) / extent.height());
            cells = rowByNeed((WIDTH - 2 * GAP * n - scale * width) / n);
        } else {
            cells = evenly(n);
            scale = cells.stream().mapToDouble(c -> Math.min(c.width() / extent.width(), c.height() / extent.height())).min().orElseThrow();
        }
    }

    private Form form() {
        String wanted = figure.values().text("layout", "");
        return switch (wanted) {
            case "grid" -> Form.GRID;
            case "stack" -> Form.STACK;
            case "row" -> Form.ROW;
            case "" -> extent.width() / extent.height() > STACK_FROM_ASPECT ? Form.STACK : Form.ROW;
            default -> throw new IllegalArgumentException("there is no layout '" + wanted + "'");
        };
    }

    private List<Cell> evenly(int n) {
        List<Cell> even = new ArrayList<>();
        int columns = (n + 1) / 2;
        for (int i = 0; i < n; i++) {
            even.add(switch (form) {
                case GRID -> new Cell(i % columns * WIDTH / columns + GAP, i / columns * HEIGHT / 2 + GAP, WIDTH / columns - 2 * GAP, HEIGHT / 2 - 2 * GAP);
                case STACK -> new Cell(NUMBER_COLUMN, i * HEIGHT / n + GAP, WIDTH - 8 - NUMBER_COLUMN, HEIGHT / n - 2 * GAP);
                case ROW -> new Cell(i * WIDTH / n + GAP, NUMBER_ROW, WIDTH / n - 2 * GAP, HEIGHT - NUMBER_ROW - GAP);
            });
        }
        return even;
    }

    /** Side by side, each frame gets the width it needs. */
    private List<Cell> rowByNeed(double spare) {
        List<Cell> row = new ArrayList<>();
        double x = 0;
        for (double width : extent.widths()) {
            row.add(new Cell(x + GAP, NUMBER_ROW, width * scale + spare, HEIGHT - NUMBER_ROW - GAP));
            x += width * scale + spare + 2 * GAP;
        }
        return row;
    }

    boolean isWindow() {
        return figure.values().has("window");
    }

    Cell cell(int frame) {
        return cells.get(frame);
    }

    /** The panel of a frame; a frame with a window of its own has its own scale. */
    Panel panel(int frame, Skeleton skeleton) {
        Cell cell = cells.get(frame);
        Camera camera = figure.camera(frame);
        double line = scale > FINE_LINES_BELOW_SCALE ? 1.9 : 1.6;
        Values own = figure.poses().get(frame).values();
        if (own.has("window")) {
            double[] w = own.numbers("window");
            Point about = camera.project(skeleton.joints().at(own.raw("about")));
            double ownScale = Math.min(cell.width() / (w[2] - w[0]), cell.height() / (w[3] - w[1]));
            return new Panel(camera, ownScale, cell.x() + (cell.width() - (w[2] - w[0]) * ownScale) / 2 - (w[0] + about.x()) * ownScale,
                    cell.y() + cell.height() - (cell.height() - (w[3] - w[1]) * ownScale) / 2 + (w[1] + about.y()) * ownScale, line);
        }
        boolean ownWidth = form == Form.ROW && !isWindow();
        double left = ownWidth ? extent.left(frame) : extent.left();
        double width = ownWidth ? extent.width(frame) : extent.width();
        Point shift = extent.shift(frame);
        return new Panel(camera, scale, cell.x() + (cell.width() - width * scale) / 2 - (left + shift.x()) * scale,
                cell.y() + cell.height() - (cell.height() - extent.height() * scale) / 2 + (extent.bottom() + shift.y()) * scale, line);
    }

    /** What is cut off round a frame of a close-up, or null when nothing is. */
    Cell clip(int frame, Panel panel) {
        Cell cell = cells.get(frame);
        Values own = figure.poses().get(frame).values();
        if (own.has("window")) {
            double[] w = own.numbers("window");
            double height = (w[3] - w[1]) * panel.scale();
            return new Cell(cell.x(), cell.y() + (cell.height() - height) / 2, cell.width(), height);
        }
        if (!isWindow()) {
            return null;
        }
        double width = extent.width() * scale;
        double height = extent.height() * scale;
        return new Cell(cell.x() + (cell.width() - width) / 2, cell.y() + (cell.height() - height) / 2, width, height);
    }

    Point numberAt(int frame) {
        Cell cell = cells.get(frame);
        return switch (form) {
            case STACK -> new Point(13, cell.y() + 11);
            case GRID -> new Point(cell.x() + 10, cell.y() + 11);
            case ROW -> new Point(cell.x() + 10, 13);
        };
    }

    /** Upper left of the hold mark. */
    Point holdAt(int frame, double width) {
        if (figure.values().has("hold_at")) {
            double[] at = figure.values().numbers("hold_at");
            return new Point(at[0], at[1]);
        }
        Cell cell = cells.get(frame);
        if (form == Form.STACK) {
            return new Point(figure.values().text("hold_side", "left").equals("right") ? WIDTH - 4 - width : NUMBER_COLUMN, cell.y() + 1);
        }
        double right = cell.x() + cell.width() - width + 1;
        return new Point(cell.width() > width + 22 ? Math.max(cell.x() + 22, right) : right, GAP);
    }

    /** Hairlines between the frames. */
    String rules() {
        StringBuilder svg = new StringBuilder();
        int n = figure.frames();
        for (int i = 1; i < (form == Form.GRID ? Math.min(n, 2) : n); i++) {
            String d = switch (form) {
                case GRID -> "M6 " + Svg.num(HEIGHT / 2) + "H" + Svg.num(WIDTH - 6);
                case STACK -> "M6 " + Svg.num(i * HEIGHT / n) + "H" + Svg.num(WIDTH - 6);
                case ROW -> "M" + Svg.num(cells.get(i).x() - GAP) + " 6V" + Svg.num(HEIGHT - 6);
            };
            svg.append("<path d=\"").append(d).append("\" stroke=\"").append(Svg.RULE).append("\" stroke-width=\"1\"/>");
        }
        return svg.toString();
    }
}
