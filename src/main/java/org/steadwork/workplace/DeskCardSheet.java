package org.steadwork.workplace;

import java.util.List;

/**
 * Cards to print and stick to a desk, up to four on a page.
 *
 * @param chosen   whether the cards show what should be bought set up; false: the best with what is there
 * @param choosing whether there is anything to buy, so that there is a choice
 */
record DeskCardSheet(long caseId, String mark, boolean chosen, boolean choosing, List<Card> cards) {

    /** One person's settings under a mark of their own choice, which may be empty; never a name by default. */
    record Card(String mark, String place, String date, List<Recommendation.Setting> settings, String drawing, boolean estimated) {
    }
}
