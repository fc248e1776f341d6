package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;

/** The scale drawing of the settings proposed for a work place, with nothing judged, for other parts of the case file to print. */
@ApplicationScoped
public class DeskPictures {

    @Inject
    Assessments assessments;

    @Inject
    WorkplaceContent content;

    @Inject
    EquipmentContent equipment;

    @Inject
    DeskDrawing drawing;

    /** Returns the drawing of the settings the latest assessment leads to as one svg element; empty while none can be worked out. */
    public Optional<String> svg(long caseId) {
        return assessments.latest(caseId).map(assessments::recorded).flatMap(recorded -> {
            Recommending recommending = new Recommending(recorded, content, equipment);
            return recommending.settings().map(at -> drawing.card(recorded, at, recommending.keysApart()));
        });
    }
}
