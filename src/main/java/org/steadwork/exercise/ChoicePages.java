package org.steadwork.exercise;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.web.Answers;
import org.steadwork.web.Option;

/** Choosing an exercise: the catalogue for the regions of the case, with what stands against each. */
@Path("/cases/{id: \\d+}/programme/add")
@RolesAllowed("clinician")
class ChoicePages {

    @Inject
    CaseHeads heads;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    SymptomReports reports;

    @Inject
    Prescriptions prescriptions;

    @Inject
    CaseSafeties safeties;

    /**
     * @param region key of a body region, {@code all}, or nothing for the regions of the case
     * @param desk   anything to show only exercises for the desk
     */
    @GET
    public Response choose(@RestPath long id, @RestQuery String region, @RestQuery String desk) {
        CaseHead head = heads.open(id, CaseTab.PROGRAMME);
        Set<BodyRegion> reported = reports.regionsReported(id);
        String narrowed = region == null ? "" : region;
        boolean deskOnly = desk != null && !desk.isBlank();
        List<Choice.Group> groups = grouped(id, wanted(narrowed, reported).stream().filter(e -> !deskOnly || e.desk()).toList());
        List<Option> regions = Arrays.stream(BodyRegion.values()).map(r -> new Option(r.key(), r.label())).toList();
        return Answers.page(ProgrammePages.Templates.choose(head, new Choice(groups, regions, narrowed, deskOnly, !reported.isEmpty(), catalogue.sets())));
    }

    private Collection<Exercise> wanted(String region, Set<BodyRegion> reported) {
        if (region.isEmpty()) {
            return catalogue.forRegions(reported);
        }
        return Arrays.stream(BodyRegion.values()).filter(r -> r.key().equals(region)).findFirst()
                .<Collection<Exercise>>map(r -> catalogue.all().stream().filter(e -> e.regions().contains(r)).toList()).orElseGet(catalogue::all);
    }

    /** Each exercise stands once, under the first of its regions as the body has them from head to foot. */
    private List<Choice.Group> grouped(long caseId, Collection<Exercise> exercises) {
        CaseSafety safety = safeties.of(caseId);
        Set<String> given = prescriptions.given(caseId);
        Map<BodyRegion, List<Choice.Row>> rows = new EnumMap<>(BodyRegion.class);
        for (Exercise exercise : exercises) {
            rows.computeIfAbsent(exercise.regions().stream().min(Enum::compareTo).orElseThrow(), r -> new ArrayList<>()).add(row(exercise, safety, given));
        }
        return rows.entrySet().stream().map(e -> new Choice.Group(e.getKey().label(), e.getValue())).toList();
    }

    private static Choice.Row row(Exercise exercise, CaseSafety safety, Set<String> given) {
        return new Choice.Row(exercise, safety.of(exercise), given.contains(exercise.key()));
    }
}
