package org.steadwork.demo;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;

/**
 * Loads the demo clinic at the first start with {@code steadwork.demo=true}. Invented and real data never meet: a database
 * that holds a clinic without the demo's mark is refused in demo mode, and one with the mark is refused without it, because
 * its pages would then not be marked.
 */
@ApplicationScoped
class DemoStart {

    private static final Logger LOG = Logger.getLogger("steadwork");

    @Inject
    DemoLoader loader;

    @ConfigProperty(name = "steadwork.demo")
    boolean demo;

    /** Runs before the observers that greet the user, so that the greeting finds the accounts. */
    @ActivateRequestContext
    void start(@Observes @Priority(100) StartupEvent event) {
        boolean marked = loader.marked();
        if (!demo) {
            if (marked) {
                throw new IllegalStateException("This database holds the invented demo clinic. Start it with -Dquarkus.profile=demo,"
                        + " or name another data folder with -Dsteadwork.data-folder");
            }
            return;
        }
        if (!marked && !loader.empty()) {
            throw new IllegalStateException("steadwork.demo is on, but this database holds a clinic that is not the demo’s."
                    + " Nothing was loaded. Name another database with -Dsteadwork.database or another folder with -Dsteadwork.data-folder");
        }
        load();
    }

    private void load() {
        Entry clinic = Content.yaml("demo/clinic.yaml");
        int loaded = loader.clinic(clinic) ? 1 : 0;
        List<String> cases = clinic.texts("cases");
        for (String key : cases) {
            if (!loader.loaded(key)) {
                loaded += loader.caseOf(Content.yaml("demo/" + key + ".yaml"), clinic) ? 1 : 0;
            }
        }
        loaded += loader.meetings(Content.yaml("demo/meetings.yaml"), clinic) ? 1 : 0;
        loader.diary(Content.yaml("demo/diary.yaml"), clinic);
        if (loaded > 0) {
            LOG.infof("The demo clinic was loaded: %d invented cases", (Object) cases.size());
        }
    }
}
