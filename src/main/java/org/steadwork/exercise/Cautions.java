package org.steadwork.exercise;

import org.steadwork.web.Form;

/** Checks a form against what stands against an exercise: what bars it refuses, the rest must be ticked as considered. */
final class Cautions {

    private Cautions() {
    }

    static void check(Form form, CaseSafety.Verdict verdict) {
        for (CaseSafety.Caution bar : verdict.bars()) {
            form.error("cautions", switch (bar.level()) {
                case HELD -> "Suspended: " + bar.text() + ". A clinician must deal with the red flag first.";
                default -> "Not to be given: " + bar.text() + ". If this no longer holds, change the answer first.";
            });
        }
        for (CaseSafety.Caution caution : verdict.toConsider()) {
            if (!form.is("considered", caution.key())) {
                form.error(caution.fieldName(), "Tick that you considered: " + caution.text() + ".");
            }
        }
    }
}
