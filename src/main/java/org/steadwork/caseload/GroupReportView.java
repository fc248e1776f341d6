package org.steadwork.caseload;

import java.util.List;
import java.util.stream.IntStream;
import org.steadwork.people.Employer;

/**
 * The page of one group report.
 *
 * @param signed null for a draft
 * @param pages of the file
 * @param version of the stored draft, −1 when there is none yet; {@code fingerprint} of the numbers shown
 * @param note what happened meanwhile, or null
 */
record GroupReportView(Employer employer, ReportPeriod period, PrintedGroupReport report, SignedGroupReport signed, int pages, int version, String fingerprint, String note) {

    public String path() {
        return "/employers/" + employer.id() + "/group-report/" + period.key();
    }

    public List<Integer> pageNumbers() {
        return IntStream.rangeClosed(1, pages).boxed().toList();
    }
}
