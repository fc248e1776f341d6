package org.steadwork.redflag;

import java.time.LocalDate;
import java.util.Optional;
import org.steadwork.redflag.rules.Urgency;
import org.steadwork.redflag.rules.Verdict;

/**
 * How a case stands with its red flags.
 *
 * @param verdict clear only when the newest screen is clear and signed and no flag is open; incomplete when nothing was asked
 * @param screenedOn day of the newest screen; empty when there is none
 * @param outOfDate true when that screen is older than the clinic's limit
 * @param highestOpen the worst level of an open flag
 */
public record CaseStatus(Verdict verdict, Optional<LocalDate> screenedOn, boolean signed, boolean outOfDate,
                         Optional<Urgency> highestOpen) {
}
