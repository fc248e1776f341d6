package org.steadwork.drawing;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.awt.geom.Rectangle2D;
import java.util.Locale;

import org.jfree.chart.ChartRenderingInfo;
import org.jfree.svg.SVGGraphics2D;

/**
 * A measure over the visits of a case: grey band = measurement error around the baseline, dashed line = importance, filled
 * squares = visits with a score, open squares = visits without one, lettered shapes over the plot = changes of the plan, in a
 * large chart with a key under it (the letters follow the dates, so that charts with the same marks share their letters).
 * A line only from three scores on. The y axis spans the instrument. Nothing is drawn where there is no score.
 */
public final class TrendChart {

    /** Scores below this are points without a line: two points have no trend. */
    static final int LEAST_FOR_A_LINE = 3;
    private static final String FONT = "system-ui, 'Liberation Sans', Arial, sans-serif";

    private static final int KEPT_CHARACTERS = 12_000_000;

    /** The charts drawn last: a case is looked at several times on the day of its visit, and a chart is nothing but its trend. */
    private static final Cache<Drawn, String> DRAWN = Caffeine.newBuilder().maximumWeight(KEPT_CHARACTERS)
            .weigher((Drawn drawn, String svg) -> svg.length()).executor(Runnable::run).build();

    private record Drawn(Trend trend, TrendSize size) {
    }

    private TrendChart() {
    }

    /** The main chart in three sizes, one after the other; the page's style sheet shows the one that fits. */
    public static String figure(Trend trend) {
        return draw(trend, TrendSize.WIDE) + draw(trend, TrendSize.MIDDLE) + draw(trend, TrendSize.NARROW);
    }

    /** The small chart of a row of charts in two sizes, one after the other. */
    public static String multiple(Trend trend) {
        return draw(trend, TrendSize.SMALL) + draw(trend, TrendSize.TINY);
    }

    /** One chart as one svg element without style attributes or transparency; letters take one size. */
    public static String draw(Trend trend, TrendSize size) {
        return DRAWN.get(new Drawn(trend, size), TrendChart::anew);
    }

    /** Forgets the charts kept in memory. */
    public static void forgetAll() {
        DRAWN.invalidateAll();
    }

    private static String anew(Drawn drawn) {
        Trend trend = drawn.trend();
        TrendSize size = drawn.size();
        TrendFrame frame = new TrendFrame(trend, size);
        TrendPlot plot = new TrendPlot(frame);
        SVGGraphics2D canvas = PlainSvg.canvas(size.width, frame.plotHeight());
        ChartRenderingInfo info = new ChartRenderingInfo();
        plot.chart().draw(canvas, new Rectangle2D.Double(0, 0, size.width, frame.plotHeight()), info);
        Rectangle2D area = info.getPlotInfo().getDataArea();
        String height = PlainSvg.rounded(String.valueOf(frame.height()));
        String id = trend.id() + "-" + size.name().toLowerCase(Locale.ROOT);
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"" + size.cssClass + "\" viewBox=\"0 0 " + size.width + " " + height
                + "\" width=\"" + size.width + "\" height=\"" + height + "\" role=\"img\" focusable=\"false\" aria-labelledby=\"t-" + id
                + " d-" + id + "\" font-family=\"" + FONT + "\"><title id=\"t-" + id + "\">" + SvgText.escape(trend.measure())
                + "</title><desc id=\"d-" + id + "\">" + SvgText.escape(alternative(trend)) + "</desc>\n"
                + PlainSvg.inside(canvas.getSVGElement()) + new TrendMarks(frame, area, plot).draw()
                + new TrendLabels(frame, area, plot).draw() + "</svg>\n";
    }

    /** The chart in words. */
    public static String alternative(Trend trend) {
        return new TrendWords(trend).alternative();
    }
}
