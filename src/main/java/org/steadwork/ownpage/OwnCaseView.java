package org.steadwork.ownpage;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.steadwork.web.Form;

/**
 * The patient's own page as the clinician sees it.
 *
 * @param late    sessions of the last weeks told of exercises that were suspended or ended by then
 * @param names   names of the exercises by their key
 * @param address the link just made, once; null otherwise
 * @param code    its QR code; null otherwise
 * @param local   true when the address is one that no phone reaches
 */
record OwnCaseView(List<Link> links, List<Report> reports, List<SessionTick> alarms, List<SessionTick> late, OwnWeeks weeks, boolean ticked, Map<String, String> names, Form form, String address, String code, boolean local) {

    /** A link and how it stands. */
    record Link(OwnLink link, String state, boolean alive) {

        static Link of(OwnLink link, LocalDate today) {
            String state = link.revokedAt() != null ? "revoked" : link.lockedAt() != null ? "locked after " + OwnLink.TRIES + " wrong dates" : today.isAfter(link.expiresOn()) ? "over" : "opens";
            return new Link(link, state, link.alive(today));
        }
    }

    /** A report with its lines in words. */
    record Report(OwnReport report, List<String> lines) {

        public String field() {
            return "note" + report.id();
        }
    }

    public List<Report> waiting() {
        return reports.stream().filter(r -> r.report().reviewedAt() == null).toList();
    }

    public List<Report> looked() {
        return reports.stream().filter(r -> r.report().reviewedAt() != null).toList();
    }

    /** Name of the exercise of a session. */
    public String name(SessionTick tick) {
        return names.getOrDefault(tick.prescription().exerciseKey(), tick.prescription().exerciseKey());
    }

    /** The link that opens now, or null. */
    public Link current() {
        return links.stream().filter(Link::alive).findFirst().orElse(null);
    }
}
