package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.WorkPlan;
import org.steadwork.casefile.WorkPlanTerms;
import org.steadwork.casefile.WorkPlanWeek;
import org.steadwork.casefile.WorkPlans;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;

/** The graded return as agreed: hours week by week, limits, who agreed. The rule for a step speaks of pain and stays in the case file. */
@ApplicationScoped
class WorkPlanFacts implements LetterFacts {

    @Inject
    WorkPlans plans;

    @Override
    public List<LetterFact> of(CaseFile file) {
        return plans.current(file.id()).map(WorkPlanFacts::facts).orElse(List.of());
    }

    private static List<LetterFact> facts(WorkPlan plan) {
        WorkPlanTerms terms = plan.terms();
        String because = "return-to-work plan " + plan.number();
        List<LetterFact> facts = new ArrayList<>();
        // one fact, so that a letter without a place for it lists it as held back once
        facts.add(new LetterFact(InformationCategory.WORK_MODIFICATIONS, "weeks",
                plan.weekRows().stream().map(WorkPlanFacts::row).collect(Collectors.joining("\n")), because));
        if (terms.restrictions() != null && !terms.restrictions().isBlank()) {
            facts.add(new LetterFact(InformationCategory.FUNCTIONAL_CAPACITY, "restrictions", sentence(terms.restrictions()), because));
        }
        facts.add(new LetterFact(InformationCategory.WORK_MODIFICATIONS, "agreed",
                sentence("On " + Dates.inLetter(terms.agreedOn()) + " with " + terms.agreedWith()), because));
        return facts;
    }

    /** The week of usual hours has no end. */
    private static String row(WorkPlanWeek week) {
        return String.join("\t", String.valueOf(week.number()), Dates.inLetter(week.from()), week.normal() ? "onwards" : Dates.inLetter(week.until()),
                week.normal() ? week.hours() + ", usual" : week.hours(), days(week));
    }

    private static String days(WorkPlanWeek week) {
        List<String> days = new ArrayList<>();
        Iterator<String> hours = week.dayHours().iterator();
        week.byDay().keySet().forEach(day -> days.add(day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + "\u00a0" + hours.next()));
        return String.join(", ", days);
    }

    private static String sentence(String words) {
        String plain = words.strip();
        return plain.matches("(?s).*[.!?]") ? plain : plain + ".";
    }
}
