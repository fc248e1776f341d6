package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseScope;

/** A feature with nothing to say that a test lets fail or take long. */
@ApplicationScoped
class SilentAttention implements Attention {

    static volatile boolean fails;
    static volatile Callable<?> meanwhile;

    @Override
    public Set<String> rules() {
        return Set.of();
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        if (fails) {
            throw new IllegalStateException("told to fail");
        }
        Callable<?> work = meanwhile;
        if (work != null) {
            try {
                work.call();
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        }
        return List.of();
    }
}
