package org.steadwork.workplace;

import org.steadwork.workplace.fit.Band;

/**
 * Words and range of a {@link PlanItem}.
 *
 * @param otherwise what is drawn when it was not read off; NaN for nothing
 */
record PlanText(PlanItem item, String group, String label, String unit, Band range, boolean needed, double otherwise) {

    public String key() {
        return item.key();
    }
}
