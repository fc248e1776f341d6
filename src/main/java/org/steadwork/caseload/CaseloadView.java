package org.steadwork.caseload;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;

/**
 * One page of the caseload.
 *
 * @param figures −1 cases and no section while something in the choice is wrong
 */
record CaseloadView(CaseloadTab tab, Form form, SelectionForm.Offers offers, KeptFigures.Counted figures, Definitions definitions) {

    private static final List<String> CHOSEN = List.of("from", "to", "clinician", "employer", "region", "complaint", "first", "second");

    public List<Section> sections() {
        return figures.sections();
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
        return figures.cases() == 0;
    }

    /** How many cases there are, and when they were counted where that may be a while ago. */
    public String counted() {
        int cases = figures.cases();
        return cases < 0 ? "" : Cell.grouped(cases) + (cases == 1 ? " case" : " cases") + (figures.many() ? ", counted " + Dates.shown(figures.at()) : "");
    }

    public List<Definitions.Indicator> indicators() {
        return tab == CaseloadTab.QUALITY ? definitions.indicators() : List.of();
    }
}
