package org.steadwork.meeting;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.web.BrokenRecordException;
import org.steadwork.web.Dates;

/** The files of a meeting: the pack with one page a case, and the minutes. */
@Path("/meetings/{meeting: \\d+}/file")
@RolesAllowed("clinician")
class MeetingFilePages {

    @Inject
    Meetings meetings;

    @Inject
    MeetingPrinter printer;

    @Inject
    MinutesWriter writer;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    /** The case-meeting pack; {@code for=room} is what guests may have too, everything else is for the clinicians alone. */
    @GET
    @Path("/pack.pdf")
    public Response pack(@RestPath long meeting, @RestQuery("for") String reader) {
        ReviewMeeting one = meetings.whole(meeting);
        boolean forGuests = "room".equals(reader);
        byte[] file = printer.pack(one, forGuests).bytes();
        audit.record(forGuests ? "printed pack of review meeting for the room" : "printed pack of review meeting", null, null, Dates.shown(one.heldOn()));
        return pdf(file, "review-meeting-" + one.heldOn() + (forGuests ? "-room" : "") + ".pdf");
    }

    /** The minutes as they were closed, or a draft of them that says so. */
    @GET
    @Path("/minutes.pdf")
    public Response minutes(@RestPath long meeting) {
        ReviewMeeting one = meetings.whole(meeting);
        Optional<Minutes> minutes = meetings.minutes(meeting);
        if (minutes.isPresent() && !minutes.get().untouched()) {
            throw new BrokenRecordException("The minutes of " + Dates.shown(one.heldOn()) + " no longer have the fingerprint they were closed with",
                    "They may have been tampered with. Compare with a backup.");
        }
        byte[] file = minutes.map(Minutes::pdf).orElseGet(() -> printer.minutes(writer.draft(one), Instant.now(clock)).bytes());
        audit.record("opened minutes of review meeting", null, null, Dates.shown(one.heldOn()));
        return pdf(file, "review-meeting-" + one.heldOn() + "-minutes" + (minutes.isPresent() ? "" : "-draft") + ".pdf");
    }

    private static Response pdf(byte[] file, String name) {
        return Response.ok(file, "application/pdf").header("Content-Disposition", "inline; filename=\"" + name + "\"").header("Cache-Control", "no-store").build();
    }
}
