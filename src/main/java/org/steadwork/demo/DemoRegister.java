package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.steadwork.content.Entry;
import org.steadwork.people.Site;
import org.steadwork.workplace.Furniture;
import org.steadwork.workplace.FurnitureKind;
import org.steadwork.workplace.Register;
import org.steadwork.workplace.Room;
import org.steadwork.workplace.SizeKnown;

/** The rooms, desks and chairs at the invented employers' sites. */
@ApplicationScoped
class DemoRegister {

    /** The day on which the clinic's people went round with a tape. */
    private static final LocalDate MEASURED = LocalDate.of(2030, 1, 14);

    @Inject
    Register register;

    void load(Site site, Entry written) {
        for (Entry entry : written.entries("rooms")) {
            Room room = new Room(site, entry.text("name"));
            register.add(room);
            entry.entries("desks").forEach(desk -> add(room, FurnitureKind.DESK, desk));
            entry.entries("chairs").forEach(chair -> add(room, FurnitureKind.CHAIR, chair));
        }
    }

    private void add(Room room, FurnitureKind kind, Entry entry) {
        Furniture piece = new Furniture(room, kind, entry.text("name"));
        piece.is(entry.text("name"), entry.optionalText("stands").orElse(null), null);
        register.add(piece);
        Map<String, BigDecimal> sizes = new LinkedHashMap<>();
        entry.entry("sizes").ifPresent(given -> given.keys().forEach(key -> sizes.put(key, new BigDecimal(given.text(key)))));
        register.record(piece, sizes, SizeKnown.MEASURED, MEASURED);
    }

    /** Returns the desk or chair that the clinic's address book knows under a key. */
    Furniture piece(DemoVisit visit, String key) {
        for (Entry employer : visit.clinic().entries("employers")) {
            for (Entry site : employer.entries("sites")) {
                for (Entry room : site.entries("rooms")) {
                    Optional<Entry> written = Stream.concat(room.entries("desks").stream(), room.entries("chairs").stream())
                            .filter(piece -> piece.text("key").equals(key)).findFirst();
                    if (written.isPresent()) {
                        return register.named(employer.text("name"), room.text("name"), written.get().text("name"))
                                .orElseThrow(() -> written.get().problem("it was not loaded"));
                    }
                }
            }
        }
        throw visit.entry().problem("the clinic registers no '" + key + "'");
    }
}
