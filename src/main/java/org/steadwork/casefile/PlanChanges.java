package org.steadwork.casefile;

import java.util.List;
import org.steadwork.drawing.PlanMark;

/**
 * Tells when the plan of a case changed, so that trends can mark it. Each feature whose plan changes is one bean of this type
 * and costs at most one query.
 */
public interface PlanChanges {

    /** The changes of a case in any order; one a day and kind is enough. */
    List<PlanMark> of(CaseFile caseFile);
}
