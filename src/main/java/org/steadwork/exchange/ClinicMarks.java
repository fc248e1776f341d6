package org.steadwork.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.UUID;

/** Keeps the mark of the clinic; whoever asks first makes it. */
@ApplicationScoped
public class ClinicMarks {

    @Inject
    EntityManager db;

    /** Returns the mark, a random UUID that stays the same for good. */
    @Transactional
    public String mark() {
        ClinicMark stored = db.find(ClinicMark.class, ClinicMark.ONLY);
        if (stored == null) {
            stored = new ClinicMark(UUID.randomUUID().toString());
            db.persist(stored);
            db.flush();
        }
        return stored.mark();
    }
}
