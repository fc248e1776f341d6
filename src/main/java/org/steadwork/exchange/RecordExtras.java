package org.steadwork.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.AdherenceEntries;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exposure.ExposureRecord;
import org.steadwork.letter.CaseCorrespondence;
import org.steadwork.obstacle.Obstacle;
import org.steadwork.obstacle.ObstacleAnswers;
import org.steadwork.obstacle.Obstacles;

/** What the worker's own copy holds beyond the bundle: obstacles, exposure results, how the exercises went, and everything that letters could say. */
@ApplicationScoped
class RecordExtras {

    @Inject
    EntityManager db;

    @Inject
    ObstacleAnswers answers;

    @Inject
    Obstacles obstacles;

    @Inject
    AdherenceEntries adherence;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    CaseCorrespondence letters;

    void add(Map<String, Object> document, CaseFile file) {
        document.put("obstacles", answers.of(file.id()).stream().map(answer -> CaseDocument.row("obstacle", obstacles.find(answer.obstacle()).map(Obstacle::name).orElse(answer.obstacle()),
                "answer", answer.answer().name().toLowerCase(Locale.ROOT), "words", answer.words(), "on", answer.answeredOn())).toList());
        document.put("exposure_results", db.createQuery("from ExposureRecord where caseFile.id = ?1 order by assessedOn, id", ExposureRecord.class).setParameter(1, file.id()).getResultList()
                .stream().map(record -> CaseDocument.row("method", record.title(), "task", record.task(), "on", record.assessedOn(), "by", record.assessedBy(), "result",
                        record.headline(), "band", record.band(), "withdrawn", record.withdrawn(), "corrected", record.corrected())).toList());
        document.put("exercise_reports", adherence.ofCase(file.id()).values().stream().flatMap(List::stream).map(entry -> CaseDocument.row("exercise",
                catalogue.find(entry.prescription().exerciseKey()).map(Exercise::name).orElse(entry.prescription().exerciseKey()), "week_to", entry.weekTo(), "pain_during",
                entry.painDuring(), "reported_by", entry.reportedBy())).toList());
        document.put("in_words", letters.inWords(file).stream().map(fact -> CaseDocument.row("information", fact.information(), "words", fact.words(), "from", fact.source()))
                .toList());
    }
}
