package org.steadwork.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exchange.fhir.Portion;
import org.steadwork.letter.CaseCorrespondence;
import org.steadwork.letter.CaseCorrespondence.ConsentGiven;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;

/** Who may have a case in a format for other programs: the worker, and each reader of a consent. */
@ApplicationScoped
class CaseReaders {

    /** The worker, who needs no consent. */
    static final String WORKER = "worker";

    /**
     * One reader with what would go.
     *
     * @param shut why nothing may go; null when something may
     */
    public record Row(String key, String name, String kind, List<String> goes, List<String> heldBack, String shut) {
    }

    @Inject
    CaseCorrespondence letters;

    @Inject
    Clock clock;

    List<Row> rows(CaseFile file) {
        List<Row> rows = new ArrayList<>();
        Matrix matrix = letters.matrix();
        rows.add(row(own(file), "the patient\u2019s own copy", null, matrix));
        letters.consents(file.id()).stream().filter(ConsentGiven::counts).forEach(given -> rows.add(row(Portion.of(given, matrix), given.kind().label(),
                given.inForce() ? null : "The consent is " + given.reader().gate().label() + ".", matrix)));
        return rows;
    }

    private static Row row(Portion portion, String kind, String shut, Matrix matrix) {
        return new Row(portion.readerKey(), portion.name(), kind, labels(portion, matrix, true), labels(portion, matrix, false), shut);
    }

    private static List<String> labels(Portion portion, Matrix matrix, boolean goes) {
        return Arrays.stream(InformationCategory.values()).filter(category -> portion.has(category) == goes).map(matrix::label).toList();
    }

    /** Returns what a reader may have; empty for one that the case does not know. */
    Optional<Asked> find(CaseFile file, String key) {
        if (key == null || key.isBlank() || key.equals(WORKER)) {
            return Optional.of(new Asked(own(file), null));
        }
        return letters.consents(file.id()).stream().filter(given -> given.counts() && given.readerKey().equals(key)).findFirst()
                .map(given -> new Asked(Portion.of(given, letters.matrix()), given.inForce() ? null : given.reader().gate().label()));
    }

    /**
     * What was asked for.
     *
     * @param shut the state of the consent when nothing may go, else null
     */
    record Asked(Portion portion, String shut) {
    }

    private Portion own(CaseFile file) {
        return Portion.own(letters.matrix(), file.patient().name(), LocalDate.now(clock));
    }
}
