package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steadwork.workplace.fit.BodyMeasure;

/** The measures of the person that were taken for a case's work places, for what leaves the clinic. */
@ApplicationScoped
public class MeasuredBody {

    /**
     * One measure of one assessment.
     *
     * @param unit of {@code amount} and {@code standardError}: mm or kg
     * @param how measured, told or estimated, as a lower-case word
     * @param standardError one standard deviation; 0 when nothing is known about it
     */
    public record Value(long assessmentId, LocalDate on, String key, String label, BigDecimal amount, String unit, String how, BigDecimal standardError) {
    }

    @Inject
    EntityManager db;

    @Inject
    WorkplaceContent content;

    /** Returns the measures of the person of a case, the earliest assessment first, in one query. */
    public List<Value> of(long caseId) {
        Map<String, MeasureText> texts = Arrays.stream(BodyMeasure.values()).map(content::text).filter(Objects::nonNull)
                .collect(Collectors.toMap(MeasureText::key, Function.identity()));
        return db.createQuery("select m, a.assessedOn from RecordedMeasurement m join m.assessment a where a.caseFile.id = ?1 order by a.assessedOn, a.id, m.id",
                Object[].class).setParameter(1, caseId).getResultList().stream()
                .filter(row -> texts.containsKey(((RecordedMeasurement) row[0]).measure()))
                .map(row -> value((RecordedMeasurement) row[0], (LocalDate) row[1], texts)).toList();
    }

    private static Value value(RecordedMeasurement measured, LocalDate on, Map<String, MeasureText> texts) {
        Taken taken = measured.taken();
        return new Value(measured.assessmentId(), on, measured.measure(), texts.get(measured.measure()).label(), taken.amount(), taken.unit(),
                taken.how().name().toLowerCase(Locale.ROOT).replace('_', ' '), taken.standardError());
    }
}
