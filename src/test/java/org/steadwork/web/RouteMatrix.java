package org.steadwork.web;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Who may come in where, as it was decided and not as the classes say it: {@code routes.csv}. A route that is not there fails
 * {@link RoutesTest}, so that somebody thinks about it.
 */
final class RouteMatrix {

    /**
     * One decision.
     *
     * @param others what a clinician finds at it in the case of another, where cases open to their care team: {@code closed}, or
     *     {@code open} where it holds nothing of one case
     */
    record Row(Route route, String others) {
    }

    private RouteMatrix() {
    }

    static List<Row> all() {
        CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).setCommentMarker('#').get();
        try (var reader = new InputStreamReader(RouteMatrix.class.getResourceAsStream("routes.csv"), StandardCharsets.UTF_8); var csv = format.parse(reader)) {
            List<Row> rows = new ArrayList<>();
            for (CSVRecord row : csv) {
                rows.add(new Row(new Route(row.get("method"), row.get("path"), row.get("who")), row.get("others")));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
