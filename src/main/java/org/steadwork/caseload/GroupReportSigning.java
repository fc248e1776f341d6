package org.steadwork.caseload;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.qute.Location;
import io.quarkus.qute.Template;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityExistsException;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import org.steadwork.account.Account;
import org.steadwork.account.AuditTrail;
import org.steadwork.letter.Letterhead;
import org.steadwork.letter.pdf.LetterPdf;
import org.steadwork.letter.pdf.PdfPress;
import org.steadwork.people.Employer;
import org.steadwork.web.BrokenRecordException;
import org.steadwork.web.Dates;

/** Prints group reports, and signs them: counted once more, compared with what the signer saw, kept for good. */
@ApplicationScoped
class GroupReportSigning {

    /** What somebody signs is not what is there any more. */
    static final class ChangedMeanwhile extends RuntimeException {
        private static final long serialVersionUID = 1L;

        ChangedMeanwhile(String message) {
            super(message);
        }
    }

    @Inject
    GroupReports reports;

    @Inject
    GroupReportCounting counting;

    @Inject
    Letterhead letterhead;

    @Inject
    @Location("caseload/group-report-print.html")
    Template print;

    @Inject
    ObjectMapper json;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    LetterPdf pdf(PrintedGroupReport report, Account author) {
        return PdfPress.print(print.data("report", report).render(), report.title(), author.fullName(), Instant.now(clock), letterhead.paper());
    }

    /** Returns what tells two states of the numbers apart: neither the day nor who looks at them is in it. */
    static String fingerprint(PrintedGroupReport report) {
        String numbers = report.people() + "|" + report.places() + "|" + report.tables() + "|" + report.comment();
        return LetterPdf.sha256(numbers.getBytes(StandardCharsets.UTF_8)).substring(0, 16);
    }

    /**
     * Signs.
     *
     * @param seenVersion of the draft that was looked at, −1 when there was none
     * @param seen fingerprint of the numbers that were looked at
     * @throws org.steadwork.kernel.StaleVersionException when the word to the reader was changed meanwhile
     * @throws ChangedMeanwhile when the numbers are others by now
     * @throws jakarta.persistence.PersistenceException when somebody else signed or saved meanwhile
     */
    @Transactional
    public void sign(Employer employer, ReportPeriod period, int seenVersion, String seen, Account signer) {
        GroupReport report = reports.ofForChange(employer, period).orElse(null);
        if (report == null) {
            report = new GroupReport(employer, period);
            report.say(null, signer, Instant.now(clock));
            reports.keep(report);
        } else if (reports.signed(report).isPresent()) {
            throw new EntityExistsException("Report " + report.reference() + " was signed meanwhile");
        } else {
            report.requireVersion(seenVersion);
        }
        PrintedGroupReport printed = counting.printed(employer, period, report, signer, "Signed electronically on " + Dates.inLetter(LocalDate.now(clock)));
        if (!fingerprint(printed).equals(seen)) {
            throw new ChangedMeanwhile("Report " + report.reference() + " counts otherwise by now");
        }
        reports.keep(new SignedGroupReport(report, signer, Instant.now(clock), written(printed), pdf(printed, signer)));
        audit.record("signed group report", null, null, report.reference());
    }

    private String written(PrintedGroupReport report) {
        try {
            return json.writeValueAsString(report);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A group report cannot be written down", e);
        }
    }

    /** Reads what a signed report says. */
    PrintedGroupReport read(SignedGroupReport signed) {
        try {
            return json.readerFor(PrintedGroupReport.class).without(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                    .readValue(signed.content());
        } catch (JsonProcessingException e) {
            throw new BrokenRecordException("What report " + signed.reference() + " says cannot be read", "The signed file itself may still be whole: get it below.");
        }
    }

    /** Returns the signed file, and refuses to hand out one that no longer has its fingerprint. */
    byte[] whole(SignedGroupReport signed) {
        if (!signed.untouched()) {
            throw new BrokenRecordException("The stored file of report " + signed.reference() + " is not the one that was signed",
                    "Its fingerprint differs, so it must not be relied on. Ask whoever it was sent to for the copy they have.");
        }
        return signed.pdf();
    }
}
