package org.steadwork.account;

import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/** The notes of views that the running request began; used by one thread at a time, as the request is. */
@RequestScoped
class AwaitedNotes {

    private final Queue<CompletableFuture<Void>> notes = new ArrayDeque<>();

    void add(CompletableFuture<Void> note) {
        notes.add(note);
    }

    /** Waits until all are stored; fails as storing failed, once. */
    void await() {
        for (CompletableFuture<Void> note = notes.poll(); note != null; note = notes.poll()) {
            try {
                note.join();
            } catch (CompletionException e) {
                throw e.getCause() instanceof RuntimeException cause ? cause : e;
            }
        }
    }
}
