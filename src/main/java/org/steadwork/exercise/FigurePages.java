package org.steadwork.exercise;

import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.exercise.dayplan.Range;

/** The drawings of the exercises; they hold nothing about anybody, so browsers may keep them. */
@Path("/figures/{key: [a-z0-9_]+}.svg")
@PermitAll
class FigurePages {

    private static final String ONE_DAY = "public, max-age=86400";

    @Inject
    ExerciseFigures figures;

    /**
     * @param side left or right where one side is meant; otherwise the side that the drawing shows
     * @param hold seconds to hold as prescribed, a number or a range, 0 for none; otherwise the usual ones
     */
    @GET
    public Response figure(@RestPath String key, @RestQuery String side, @RestQuery String hold) {
        String svg = figures.svg(key, side, seconds(hold)).orElseThrow(NotFoundException::new);
        return Response.ok(svg, "image/svg+xml;charset=utf-8").header("Cache-Control", ONE_DAY).build();
    }

    private static Range seconds(String hold) {
        try {
            return hold == null ? null : Range.parse(hold);
        } catch (IllegalArgumentException e) {
            throw new NotFoundException();
        }
    }
}
