package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.function.LongSupplier;
import org.steadwork.web.Collision;

/** Books and moves where several book at one moment: a collision is looked at again, and only one who finds the time taken is refused. */
@ApplicationScoped
class BookingDesk {

    private static final int TRIES = 4;

    @Inject
    Bookings bookings;

    @Inject
    Attendances attendances;

    long book(Wish wish) {
        return insisting(() -> bookings.book(wish));
    }

    void move(long id, int version, long clinicianId, Wish.RoomWish where, LocalDate day, int start, int minutes) {
        insisting(() -> {
            bookings.move(id, version, clinicianId, where, day, start, minutes);
            return id;
        });
    }

    void undo(long id, int version) {
        insisting(() -> {
            attendances.undo(id, version);
            return id;
        });
    }

    private static long insisting(LongSupplier act) {
        for (int tried = 1; ; tried++) {
            try {
                return act.getAsLong();
            } catch (RuntimeException e) {
                if (!Collision.in(e)) {
                    throw e;
                }
                if (tried == TRIES) {
                    throw new Refused("start", "Somebody else booked at the same moment. Choose the time again.", true);
                }
            }
        }
    }
}
