package org.steadwork.worklist;

import java.util.List;
import org.steadwork.casefile.Attention;

/** What needs somebody, by urgency, the longest open first. The assistant's is hidden: its reasons are clinical. */
public record Worklist(boolean shown, List<Row> now, List<Row> today, List<Row> soon) {

    /** One entry with what the case is about and the patient's file number. */
    public record Row(Attention.Entry entry, String complaint, String fileNumber) {
    }

    static Worklist hidden() {
        return new Worklist(false, List.of(), List.of(), List.of());
    }

    public boolean empty() {
        return now.isEmpty() && today.isEmpty() && soon.isEmpty();
    }
}
