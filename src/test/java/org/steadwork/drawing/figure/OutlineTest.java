package org.steadwork.drawing.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.batik.parser.AWTPathProducer;
import org.junit.jupiter.api.Test;

/** The outline is read back by Batik's own path parser, so that shape and text are checked together. */
class OutlineTest {

    /** Rounding to a tenth moves a point by at most this. */
    private static final double ROUNDING = 0.15;

    @Test
    void aCircleInsideAnotherAddsNothing() {
        Circle large = new Circle(0, 0, 5);
        assertEquals(Outline.path(List.of(large)), Outline.path(List.of(large, new Circle(1, 0, 2), large)));
    }

    @Test
    void twoEqualCirclesMakeACapsule() throws IOException {
        Shape capsule = shape(Outline.path(List.of(new Circle(0, 0, 5), new Circle(20, 0, 5))));
        assertTrue(capsule.contains(10, 4.8), "the sides are straight");
        assertFalse(capsule.contains(10, 5.2));
        assertTrue(capsule.contains(-4.8, 0), "the ends are round");
        assertFalse(capsule.contains(-4.8, 4.8));
        assertFalse(capsule.contains(25.2, 0));
    }

    @Test
    void theOutlineHoldsEveryCircleAndIsNoLargerThanItMustBe() throws IOException {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            List<Circle> circles = new ArrayList<>();
            for (int c = 0; c < 1 + random.nextInt(6); c++) {
                circles.add(new Circle(random.nextDouble() * 40, random.nextDouble() * 40, 1 + random.nextDouble() * 6));
            }
            Shape outline = shape(Outline.path(circles));
            for (int degrees = 0; degrees < 360; degrees += 15) {
                double c = Math.cos(Math.toRadians(degrees));
                double s = Math.sin(Math.toRadians(degrees));
                for (Circle circle : circles) {
                    double r = circle.r() - ROUNDING;
                    assertTrue(outline.contains(circle.x() + r * c, circle.y() + r * s), circle + " at " + degrees + " degrees of " + circles);
                }
                double farthest = circles.stream().mapToDouble(o -> o.x() * c + o.y() * s + o.r()).max().orElseThrow();
                assertEquals(farthest, support(outline, c, s), 2 * ROUNDING, "reach at " + degrees + " degrees of " + circles);
            }
        }
    }

    /** How far a shape reaches in a direction. */
    private static double support(Shape shape, double c, double s) {
        double farthest = Double.NEGATIVE_INFINITY;
        double[] at = new double[6];
        for (PathIterator path = shape.getPathIterator(null, .01); !path.isDone(); path.next()) {
            if (path.currentSegment(at) != PathIterator.SEG_CLOSE) {
                farthest = Math.max(farthest, at[0] * c + at[1] * s);
            }
        }
        return farthest;
    }

    private static Shape shape(String path) throws IOException {
        return AWTPathProducer.createShape(new StringReader(path), PathIterator.WIND_NON_ZERO);
    }
}
