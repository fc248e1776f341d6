package org.steadwork.casefile;

import java.time.LocalDate;
import java.util.List;

/** What stands around every page of a case: the rail, the navigation, the cautions. */
public record CaseHead(CaseFile file, CaseTab here, LocalDate today, List<NavItem> nav, List<CasePart.Fact> facts,
        List<CasePart.Caution> cautions) {

    /** One page of the case in its navigation. */
    public record NavItem(String label, String href, boolean current, String mark) {
    }

    public long id() {
        return file.id();
    }

    public String name() {
        return file.patient().name();
    }

    public int age() {
        return file.patient().ageOn(today);
    }

    public boolean stopped() {
        return cautions.stream().anyMatch(CasePart.Caution::stop);
    }

    public List<CasePart.Caution> stops() {
        return cautions.stream().filter(CasePart.Caution::stop).toList();
    }
}
