package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.steadwork.people.Employer;
import org.steadwork.people.Site;

/** The register of rooms, desks and chairs at the employers' sites. */
@ApplicationScoped
public class Register {

    private static final int MOST = 500;

    @Inject
    EntityManager db;

    /** Returns the rooms of a site, those in use first. */
    List<Room> rooms(long siteId) {
        return db.createQuery("from Room r where r.site.id = ?1 order by case when r.retiredOn is null then 0 else 1 end, r.name, r.id", Room.class)
                .setParameter(1, siteId).setMaxResults(MOST).getResultList();
    }

    /** Returns the rooms in use at all sites of an employer, each with its site. */
    List<Room> roomsOf(Employer employer) {
        return db.createQuery("from Room r join fetch r.site s where s.employer = ?1 and r.retiredOn is null and s.retiredOn is null"
                + " order by s.name, r.name, r.id", Room.class).setParameter(1, employer).setMaxResults(MOST).getResultList();
    }

    Optional<Room> room(long siteId, long roomId) {
        return db.createQuery("from Room r join fetch r.site s join fetch s.employer where r.id = ?1 and s.id = ?2", Room.class)
                .setParameter(1, roomId).setParameter(2, siteId).getResultStream().findFirst();
    }

    /** Returns all desks and chairs of a site, those in use first, desks before chairs. */
    List<Furniture> at(long siteId) {
        return db.createQuery("from Furniture f join fetch f.room r where r.site.id = ?1"
                + " order by case when f.retiredOn is null then 0 else 1 end, case when f.kind = ?2 then 0 else 1 end, f.name, f.id", Furniture.class)
                .setParameter(1, siteId).setParameter(2, FurnitureKind.DESK).setMaxResults(MOST).getResultList();
    }

    /** Returns the desks and chairs in use at an employer's sites, and those whose numbers are given, in use or not. */
    List<Furniture> offered(Employer employer, Collection<Long> also) {
        List<Long> kept = also.stream().filter(Objects::nonNull).toList();
        return db.createQuery("from Furniture f join fetch f.room r join fetch r.site s where (s.employer = ?1 and f.retiredOn is null"
                + " and r.retiredOn is null and s.retiredOn is null) or f.id in ?2 order by s.name, r.name, f.name, f.id", Furniture.class)
                .setParameter(1, employer).setParameter(2, kept.isEmpty() ? List.of(-1L) : kept).setMaxResults(MOST).getResultList();
    }

    public Optional<Furniture> piece(long id) {
        return db.createQuery("from Furniture f join fetch f.room r join fetch r.site s join fetch s.employer where f.id = ?1", Furniture.class)
                .setParameter(1, id).getResultStream().findFirst();
    }

    /** Finds a piece by the names of its employer, its room and itself. */
    public Optional<Furniture> named(String employer, String room, String name) {
        return db.createQuery("from Furniture f where f.name = ?3 and f.room.name = ?2 and f.room.site.employer.name = ?1", Furniture.class)
                .setParameter(1, employer).setParameter(2, room).setParameter(3, name).getResultStream().findFirst();
    }

    boolean nameTaken(Room room, FurnitureKind kind, String name, Long except) {
        return db.createQuery("select count(f) from Furniture f where f.room = ?1 and f.kind = ?2 and lower(f.name) = lower(?3) and f.id <> ?4", Long.class)
                .setParameter(1, room).setParameter(2, kind).setParameter(3, name).setParameter(4, except == null ? -1L : except).getSingleResult() > 0;
    }

    boolean roomNameTaken(Site site, String name, Long except) {
        return db.createQuery("select count(r) from Room r where r.site = ?1 and lower(r.name) = lower(?2) and r.id <> ?3", Long.class)
                .setParameter(1, site).setParameter(2, name).setParameter(3, except == null ? -1L : except).getSingleResult() > 0;
    }

    /** Returns the sizes known of these pieces, by piece and by key; one query. */
    Map<Long, Map<String, FurnitureSize>> sizes(Collection<Long> pieces) {
        Map<Long, Map<String, FurnitureSize>> sizes = new HashMap<>();
        db.createQuery("from FurnitureSize where furniture.id in ?1 order by id", FurnitureSize.class)
                .setParameter(1, pieces.isEmpty() ? List.of(-1L) : List.copyOf(pieces)).getResultList()
                .forEach(size -> sizes.computeIfAbsent(size.furniture().id(), piece -> new LinkedHashMap<>()).put(size.size(), size));
        return sizes;
    }

    Map<String, FurnitureSize> sizes(Furniture piece) {
        return sizes(List.of(piece.id())).getOrDefault(piece.id(), Map.of());
    }

    /** Returns who was assessed at these desks or on these chairs, the latest look first; one query. */
    List<Sitter> sitters(Collection<Long> pieces) {
        String row = "select new org.steadwork.workplace.Sitter(f.id, c.id, a.id, p.givenName, p.familyName, a.assessedOn)"
                + " from WorkplaceAssessment a join a.caseFile c join c.patient p join Furniture f on f = a.desk or f = a.chair where f.id in ?1"
                + " order by a.assessedOn desc, a.id desc";
        return db.createQuery(row, Sitter.class).setParameter(1, pieces.isEmpty() ? List.of(-1L) : List.copyOf(pieces)).setMaxResults(MOST)
                .getResultList();
    }

    public void add(Room room) {
        db.persist(room);
    }

    public void add(Furniture piece) {
        db.persist(piece);
        db.flush();
    }

    /**
     * Stores sizes of a piece. One that did not change keeps how and when it was known; an empty one is forgotten.
     *
     * @param sizes mm, by key; a key that is not named stays as it is, a null forgets it
     */
    public void record(Furniture piece, Map<String, BigDecimal> sizes, SizeKnown how, LocalDate on) {
        // a change of a size alone must count as a change of the piece, or two people would overwrite each other
        db.lock(piece, LockModeType.OPTIMISTIC_FORCE_INCREMENT);
        Map<String, FurnitureSize> stored = sizes(piece);
        sizes.forEach((key, amount) -> {
            FurnitureSize kept = stored.get(key);
            if (amount == null) {
                if (kept != null) {
                    db.remove(kept);
                }
            } else if (kept == null) {
                FurnitureSize made = new FurnitureSize(piece, key);
                made.is(amount, how, on);
                db.persist(made);
            } else if (kept.amount().compareTo(amount) != 0) {
                kept.is(amount, how, on);
            }
        });
    }
}
