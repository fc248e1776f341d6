package org.steadwork.storage;

import java.util.concurrent.atomic.AtomicBoolean;
import org.flywaydb.core.api.callback.Callback;
import org.flywaydb.core.api.callback.Context;
import org.flywaydb.core.api.callback.Event;

/** Remembers whether this start brought the database to a newer version. Flyway makes it by its name, so what it knows is the process's. */
public final class MigratedNow implements Callback {

    private static final AtomicBoolean HAPPENED = new AtomicBoolean();

    static boolean happened() {
        return HAPPENED.get();
    }

    @Override
    public boolean supports(Event event, Context context) {
        return event == Event.AFTER_EACH_MIGRATE;
    }

    @Override
    public boolean canHandleInTransaction(Event event, Context context) {
        return true;
    }

    @Override
    public void handle(Event event, Context context) {
        HAPPENED.set(true);
    }

    @Override
    public String getCallbackName() {
        return "migrated-now";
    }
}
