package org.steadwork.workplace;

import java.time.LocalDate;

/** Somebody who was assessed at a desk or on a chair; for clinicians only. */
public record Sitter(long piece, long caseId, long assessment, String givenName, String familyName, LocalDate on) {

    public String name() {
        return givenName + " " + familyName;
    }
}
