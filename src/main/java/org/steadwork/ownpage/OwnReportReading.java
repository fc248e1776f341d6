package org.steadwork.ownpage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.web.Form;

/** Reads a report as it was filled in; what is wrong is noted at its field. */
@ApplicationScoped
class OwnReportReading {

    private static final int LONGEST_WORDS = 1000;
    private static final String SENDING = "[A-Za-z0-9_-]{1,60}";

    @Inject
    SymptomReports symptoms;

    @Inject
    PainRise pain;

    @Inject
    OwnWorse worse;

    @Inject
    OwnDays days;

    @Inject
    Clock clock;

    /** Returns the report; null when an answer was refused, or nothing was filled in. */
    OwnReport read(OwnReportView view, Form form) {
        CaseFile file = view.file();
        List<OwnReportLine> lines = lines(view, form);
        List<OwnReportAnswer> answers = answers(view, form);
        String words = form.text("words", LONGEST_WORDS);
        List<String> now = ticked(view.now(), form);
        List<String> warnings = new ArrayList<>(now);
        warnings.addAll(ticked(view.today(), form));
        boolean empty = words == null && warnings.isEmpty() && answers.isEmpty() && lines.stream().allMatch(OwnReportReading::unanswered);
        if (empty && !form.hasErrors()) {
            form.error("words", "Nothing was filled in yet. Give at least one number, tick what is true, or write a few words.");
        }
        if (form.hasErrors()) {
            return null;
        }
        OwnReport report = new OwnReport(file, days.told(file, form), lines, warnings, !now.isEmpty(), painUp(file.id(), lines), words, Instant.now(clock));
        report.answered(answers, worse.of(file.id(), lines, answers));
        report.sentAs(form.value("sending").matches(SENDING) ? form.value("sending") : null);
        return report;
    }

    /** True when a report that waits says the same: it was sent twice, with or without a name of its own. */
    static boolean sentTwice(OwnReport report, List<OwnReport> others) {
        return others.stream().anyMatch(other -> report.sending() != null && report.sending().equals(other.sending())
                || other.reviewedAt() == null && other.reportedOn().equals(report.reportedOn()) && same(other, report));
    }

    private static List<OwnReportLine> lines(OwnReportView view, Form form) {
        List<OwnReportLine> lines = new ArrayList<>();
        for (OwnReportView.Asked zone : view.zones()) {
            lines.add(OwnReportLine.ofZone(zone.key(), pain(form, "now_" + zone.key()), pain(form, "worst_" + zone.key()), pain(form, "average_" + zone.key())));
        }
        for (OwnReportView.Asked activity : view.activities()) {
            lines.add(OwnReportLine.ofActivity(Long.parseLong(activity.key()), form.integer(activity.activityName(), activity.label(), 0, 10)));
        }
        return lines;
    }

    private static List<OwnReportAnswer> answers(OwnReportView view, Form form) {
        List<OwnReportAnswer> answers = new ArrayList<>();
        for (OwnReportView.Questionnaire asked : view.questionnaires()) {
            List<Integer> given = new ArrayList<>();
            asked.questions().forEach(question -> given.add(form.integer(question.name(), asked.words().heading(), question.least(), question.most())));
            if (given.stream().anyMatch(Objects::nonNull)) {
                answers.add(new OwnReportAnswer(asked.instrument(), given));
            }
        }
        return answers;
    }

    private static List<String> ticked(List<OwnReportView.Sign> signs, Form form) {
        return signs.stream().filter(sign -> form.is("sign", sign.key())).map(OwnReportView.Sign::words).toList();
    }

    private static Integer pain(Form form, String field) {
        return form.integer(field, "Pain", 0, 10);
    }

    private static boolean unanswered(OwnReportLine line) {
        return line.now() == null && line.worst() == null && line.average() == null && line.rating() == null;
    }

    /** True when any number of any place rose by more than error since the last report that a clinician took. */
    private boolean painUp(long caseId, List<OwnReportLine> lines) {
        Map<String, RegionReading> before = symptoms.latest(caseId).map(SymptomReport::readings).orElse(List.of()).stream()
                .collect(Collectors.toMap(RegionReading::zone, reading -> reading));
        return lines.stream().filter(line -> !line.isActivity()).anyMatch(line -> {
            RegionReading was = before.get(line.about());
            return was != null && (pain.beyondError(was.now(), line.now()) || pain.beyondError(was.worst(), line.worst()) || pain.beyondError(was.average(), line.average()));
        });
    }

    private static boolean same(OwnReport one, OwnReport other) {
        return one.warnings().equals(other.warnings()) && Objects.equals(one.ownWords(), other.ownWords()) && numbers(one).equals(numbers(other));
    }

    private static List<String> numbers(OwnReport report) {
        List<String> numbers = new ArrayList<>();
        report.lines().forEach(line -> numbers.add(line.about() + " " + line.now() + " " + line.worst() + " " + line.average() + " " + line.rating()));
        report.answers().forEach(answer -> numbers.add(answer.instrument() + " " + answer.answers()));
        return numbers;
    }
}
