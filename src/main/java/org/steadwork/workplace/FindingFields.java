package org.steadwork.workplace;

import java.util.List;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** The small form in which it is recorded what became of a finding. */
record FindingFields(Form form, Finding finding, String label, FindingLife life, String adjustment, String action) {

    private static final List<Option> STAGES = List.of(new Option("advised", "Advised"), new Option("agreed", "Agreed"), new Option("done", "Done"),
            new Option("checked", "Checked, and closed"));

    public List<Option> stages() {
        return STAGES;
    }

    public String stage() {
        return FindingRows.stage(finding);
    }
}
