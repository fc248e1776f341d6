package org.steadwork.redflag;

import org.steadwork.kernel.Answer;

/** What was answered on the page; a declined question counts as unknown. */
public record GivenAnswer(Answer answer, String note, boolean declined) {

    static final GivenAnswer NONE = new GivenAnswer(Answer.NOT_ASKED, null, false);

    public GivenAnswer {
        answer = declined ? Answer.UNKNOWN : answer;
    }

    /** True when there is nothing to store. */
    boolean blank() {
        return answer == Answer.NOT_ASKED && note == null;
    }
}
