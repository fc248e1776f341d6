package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseScope;

/** A feature with nothing to say that a test lets fail. */
@ApplicationScoped
class SilentAttention implements Attention {

    static volatile boolean fails;

    @Override
    public Set<String> rules() {
        return Set.of();
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        if (fails) {
            throw new IllegalStateException("told to fail");
        }
        return List.of();
    }
}
