package org.steadwork.workplace;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHead;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.CaseTab;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** Writes what the latest assessment measured of desk and chair to the register, each difference only when it is ticked. */
@Path("/cases/{id: \\d+}/work-place/register")
@RolesAllowed("clinician")
class WriteBackPages {

    @Inject
    CaseHeads heads;

    @Inject
    Assessments assessments;

    @Inject
    Register register;

    @Inject
    RegisterDifferences differences;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @GET
    public Response show(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.WORK_PLACE);
        RecordedWorkplace recorded = latest(id);
        List<RegisterDifference> found = differences.of(recorded);
        Form form = Form.empty().with("seen", seen(found)).withAll("take", found.stream().map(RegisterDifference::ticket).toList());
        return Answers.page(page(head, recorded, found, form));
    }

    @POST
    @Transactional
    public Response write(@RestPath long id) {
        CaseFile file = heads.find(id);
        RecordedWorkplace recorded = latest(id);
        Form form = posted.read();
        List<RegisterDifference> found = differences.of(recorded);
        if (form.is("do", "add")) {
            return add(file, recorded, found, form);
        }
        if (!form.value("seen").equals(seen(found))) {
            // what was ticked was ticked against other numbers: both are shown anew, nothing is stored
            return Answers.conflict(page(heads.head(file, CaseTab.WORK_PLACE), recorded, found, form.with("seen", seen(found)).with("changed", "yes")));
        }
        List<RegisterDifference> taken = found.stream().filter(difference -> form.is("take", difference.ticket())).toList();
        if (taken.isEmpty()) {
            form.error("take", "Tick what the register should take over, or leave it unchanged.");
            return Answers.unprocessable(page(heads.head(file, CaseTab.WORK_PLACE), recorded, found, form));
        }
        Map<Furniture, Map<String, BigDecimal>> byPiece = new LinkedHashMap<>();
        taken.forEach(difference -> byPiece.computeIfAbsent(difference.piece(), piece -> new LinkedHashMap<>()).put(difference.size(), difference.amount()));
        byPiece.forEach((piece, sizes) -> register.record(piece, sizes, SizeKnown.MEASURED, recorded.assessment().assessedOn()));
        audit.record("wrote sizes to the register", file.patient().id(), id, taken.size() + " sizes");
        return Answers.seeOther("/cases/" + id + "/work-place");
    }

    /** Adds the desk and the chair that were assessed to a room, and notes that they were assessed. */
    private Response add(CaseFile file, RecordedWorkplace recorded, List<RegisterDifference> found, Form form) {
        WorkplaceAssessment assessment = recorded.assessment();
        Room room = register.roomsOf(file.patient().employer()).stream().filter(one -> form.is("room", String.valueOf(one.id()))).findFirst().orElse(null);
        if (assessment.desk() != null && assessment.chair() != null) {
            form.error("room", "Desk and chair are in the register already.");
        } else if (room == null) {
            form.error("room", "Choose the room it stands in. A room that is not offered has to be registered with the patient's employer first.");
        }
        String desk = assessment.desk() == null ? name(form, room, FurnitureKind.DESK) : null;
        String chair = assessment.chair() == null ? name(form, room, FurnitureKind.CHAIR) : null;
        if (desk == null && chair == null && !form.hasErrors()) {
            form.error(assessment.desk() == null ? "newdesk" : "newchair", "Name what is to be added, as people there call it.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.WORK_PLACE), recorded, found, form.with("seen", seen(found))));
        }
        assessment.standsAt(desk == null ? assessment.desk() : added(recorded, room, FurnitureKind.DESK, desk),
                chair == null ? assessment.chair() : added(recorded, room, FurnitureKind.CHAIR, chair));
        audit.record("added desk or chair to the register", file.patient().id(), file.id(), null);
        return Answers.seeOther("/cases/" + file.id() + "/work-place");
    }

    private String name(Form form, Room room, FurnitureKind kind) {
        String field = "new" + kind.label();
        String name = form.text(field, 120);
        if (name != null && room != null && register.nameTaken(room, kind, name, null)) {
            form.error(field, "This room has a " + kind.label() + " of this name already: choose it in the assessment.");
        }
        return name;
    }

    private Furniture added(RecordedWorkplace recorded, Room room, FurnitureKind kind, String name) {
        Furniture piece = new Furniture(room, kind, name);
        register.add(piece);
        Map<String, BigDecimal> sizes = new LinkedHashMap<>();
        differences.measured(recorded, kind).forEach((size, amount) -> sizes.put(size.key(), amount));
        register.record(piece, sizes, SizeKnown.MEASURED, recorded.assessment().assessedOn());
        return piece;
    }

    private static String seen(List<RegisterDifference> found) {
        return Integer.toHexString(found.stream().map(d -> d.ticket() + d.stored() + d.measured()).toList().hashCode());
    }

    private RecordedWorkplace latest(long id) {
        return assessments.latest(id).map(assessments::recorded).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(CaseHead head, RecordedWorkplace recorded, List<RegisterDifference> found, Form form) {
        WorkplaceAssessment assessment = recorded.assessment();
        boolean open = assessment.desk() == null || assessment.chair() == null;
        List<Option> rooms = open ? register.roomsOf(head.file().patient().employer()).stream()
                .map(room -> new Option(String.valueOf(room.id()), room.site().name() + ", " + room.name())).toList() : List.of();
        return WorkplacePages.Templates.writeBack(head, assessment, found, rooms, form);
    }
}
