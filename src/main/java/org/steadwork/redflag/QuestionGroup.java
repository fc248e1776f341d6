package org.steadwork.redflag;

import java.util.List;

/** Questions that stand together on the page, under a heading. */
public record QuestionGroup(String title, String note, List<QuestionRow> rows) {
}
