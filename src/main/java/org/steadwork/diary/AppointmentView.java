package org.steadwork.diary;

import java.util.List;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/**
 * One appointment with what can be done with it.
 *
 * @param change  the fields for moving it, as stored or as typed
 * @param missed  where the contact after a missed visit is recorded, or null
 * @param arrives whether it is the day of the visit
 */
record AppointmentView(Appointment one, Form change, String state, String mark, List<AppointmentChange> changes, boolean undoable, List<Option> clinicians,
        List<Option> rooms, List<Proposal> proposals, String missed, boolean arrives, boolean begun) {

    public List<Option> cancellers() {
        return Option.of(CancelledBy.class, CancelledBy::label);
    }

    /** Where the visit stands in the case, for clinicians. */
    public String visitHref() {
        return one.visit() == null ? null : "/cases/" + one.caseFile().id() + "/visits/" + one.visit().number();
    }
}
