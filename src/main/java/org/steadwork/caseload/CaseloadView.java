package org.steadwork.caseload;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.steadwork.web.Form;

/**
 * One page of the caseload.
 *
 * @param cases how many cases were chosen; −1 while something in the choice is wrong
 * @param sections none while something in the choice is wrong
 */
record CaseloadView(CaseloadTab tab, Form form, SelectionForm.Offers offers, int cases, List<Section> sections, Definitions definitions) {

    private static final List<String> CHOSEN = List.of("from", "to", "clinician", "employer", "region", "complaint", "first", "second");

    CaseloadView {
        sections = List.copyOf(sections);
    }

    public List<CaseloadTab> tabs() {
        return List.of(CaseloadTab.values());
    }

    /** The choice as it stands in an address, for the other pages and the files. */
    public String query() {
        return CHOSEN.stream().filter(form::has)
                .map(field -> field + "=" + URLEncoder.encode(form.value(field).strip(), StandardCharsets.UTF_8)).collect(Collectors.joining("&"));
    }

    /** What the form of the two groups carries along. */
    public List<String> carried() {
        return CHOSEN.subList(0, 6).stream().filter(form::has).toList();
    }

    public boolean empty() {
        return cases == 0;
    }

    public String counted() {
        return cases < 0 ? "" : Cell.grouped(cases) + (cases == 1 ? " case" : " cases");
    }

    public List<Definitions.Indicator> indicators() {
        return tab == CaseloadTab.QUALITY ? definitions.indicators() : List.of();
    }
}
