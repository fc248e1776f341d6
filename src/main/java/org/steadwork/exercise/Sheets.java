package org.steadwork.exercise;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.kernel.Answer;

/** Makes the sheet for the patient: figures, doses in words, the day at work, stop rules. It names no red flag and no employer. */
@ApplicationScoped
public class Sheets {

    @CheckedTemplate(basePath = "exercise", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {

        private Templates() {
        }

        static native TemplateInstance sheet(Sheet sheet);
    }

    /**
     * What stands on the sheet.
     *
     * @param day      the day at work; null while it was not described
     * @param card     a link just made; null otherwise
     * @param hints    how the own page is reached where the sheet has no card
     * @param pregnant true when the patient is known to be pregnant
     */
    record Sheet(CaseFile file, Programme programme, DayPlanView day, SheetCard card, List<String> hints, StopRules rules, boolean pregnant, LocalDate today,
            String clinician, String profession) {

        /** The moments of the day with something to do, for the patient. */
        public List<DayPlanView.Row> stops() {
            return day == null ? List.of() : day.rows().stream().filter(DayPlanView.Row::stop).toList();
        }
    }

    @Inject
    Programmes programmes;

    @Inject
    PlannedDays planned;

    @Inject
    DayPlans plans;

    @Inject
    CaseSafeties safeties;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    CurrentAccount account;

    @Inject
    @Any
    Instance<SheetHint> hints;

    @Inject
    Clock clock;

    /** @param card a link just made, printed with the sheet; null when there is none */
    public TemplateInstance of(CaseFile file, SheetCard card) {
        CaseSafety safety = safeties.of(file.id());
        boolean pregnant = safety.answer("pregnant") == Answer.YES || safety.answer("pregnant_late") == Answer.YES;
        Programme programme = programmes.of(file);
        DayPlanView day = plans.ofCase(file.id()).map(plan -> planned.of(plan, programme)).orElse(null);
        List<String> said = card != null ? List.of() : hints.stream().flatMap(hint -> hint.of(file).stream()).toList();
        return Templates.sheet(new Sheet(file, programme, day, card, said, catalogue.stopRules(), pregnant, LocalDate.now(clock), account.displayName(),
                account.get().profession()));
    }
}
