package org.steadwork.worklist;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jboss.logging.Logger;

/**
 * Brings the list up to date before a page shows it, and lets no page wait long: the first of a day over a large clinic begins the look at all
 * its cases beside itself, and whoever comes before that has ended sees the list as it stands and that it may be out of date.
 */
@ApplicationScoped
class PageRefresh {

    private static final Logger LOG = Logger.getLogger(PageRefresh.class);

    @Inject
    Refresh refresh;

    /** A page that waits holds a connection that others may need. */
    Duration patience = Duration.ofSeconds(3);

    private final ExecutorService beside = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "look at all cases");
        thread.setDaemon(true);
        return thread;
    });
    private Future<Boolean> look;
    private LocalDate lookedOn;

    /** Returns whether the list is up to date; what fails is logged and the list shown as it stands. */
    boolean upToDate(LocalDate today) {
        Refresh.Result result = refresh.forPage(today, patience);
        return result == Refresh.Result.ALL_ARE_DUE ? waitedFor(lookAtAll(today)) : result == Refresh.Result.UP_TO_DATE;
    }

    /** The look of this day that is going on, or a new one. */
    private synchronized Future<Boolean> lookAtAll(LocalDate today) {
        if (look == null || look.isDone() || !today.equals(lookedOn)) {
            lookedOn = today;
            look = beside.submit(() -> refresh.runWhole(today));
        }
        return look;
    }

    private boolean waitedFor(Future<Boolean> all) {
        try {
            return all.get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            return false;
        } catch (ExecutionException e) {
            LOG.error("Today was not brought up to date", e.getCause());
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    @PreDestroy
    void stop() {
        beside.shutdown();
    }
}
