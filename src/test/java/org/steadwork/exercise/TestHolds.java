package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.steadwork.body.BodyRegion;

/** Suspensions that tests put in force. */
@ApplicationScoped
public class TestHolds implements ExerciseHolds {

    private final Map<Long, List<Hold>> holds = new ConcurrentHashMap<>();

    public void suspend(long caseId, String token, Set<BodyRegion> regions, String reason) {
        holds.put(caseId, List.of(new Hold(token, regions, reason)));
    }

    void release(long caseId) {
        holds.remove(caseId);
    }

    @Override
    public List<Hold> inForce(long caseId) {
        return holds.getOrDefault(caseId, List.of());
    }
}
