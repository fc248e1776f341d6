package org.steadwork.body;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The zones of the body chart, in reading order. Immutable. */
public final class BodyChart {

    private final Map<String, Zone> zones = new LinkedHashMap<>();

    /**
     * Takes the zones in any order; throws {@link IllegalArgumentException} when there are none, when a key or a place in the
     * order stands twice, when an arrow leads nowhere, or when the arrows cannot reach every zone from the first.
     */
    public BodyChart(Collection<Zone> all) {
        if (all.isEmpty()) {
            throw new IllegalArgumentException("A body chart needs zones");
        }
        List<Zone> ordered = new ArrayList<>(all);
        ordered.sort(Comparator.comparingInt(Zone::order));
        int place = 0;
        for (Zone zone : ordered) {
            if (zones.put(zone.key(), zone) != null) {
                throw new IllegalArgumentException("Zone " + zone.key() + " stands twice");
            }
            if (zone.order() != ++place) {
                throw new IllegalArgumentException("Zone " + zone.key() + " should have order " + place + ", but has " + zone.order());
            }
        }
        for (Zone zone : ordered) {
            for (Map.Entry<Direction, String> next : zone.neighbours().entrySet()) {
                if (!zones.containsKey(next.getValue())) {
                    throw new IllegalArgumentException("Zone " + zone.key() + " leads " + next.getKey().key() + " to "
                            + next.getValue() + ", which is not there");
                }
            }
        }
        Set<String> missed = new HashSet<>(zones.keySet());
        missed.removeAll(reachableFrom(ordered.get(0).key()));
        if (!missed.isEmpty()) {
            throw new IllegalArgumentException("The arrow keys do not reach " + missed);
        }
    }

    /** Returns every zone in reading order. */
    public List<Zone> zones() {
        return List.copyOf(zones.values());
    }

    public List<Zone> zones(View view) {
        return zones.values().stream().filter(zone -> zone.view() == view).toList();
    }

    public List<Zone> zones(BodyRegion region) {
        return zones.values().stream().filter(zone -> zone.region() == region).toList();
    }

    public Optional<Zone> find(String key) {
        return Optional.ofNullable(zones.get(key));
    }

    /** Returns the zone of a key; throws {@link IllegalArgumentException} when there is none. */
    public Zone zone(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException("There is no zone '" + key + "' on the body chart"));
    }

    /** Returns the regions of these zones; an unknown key throws {@link IllegalArgumentException}. */
    public Set<BodyRegion> regionsOf(Collection<String> keys) {
        Set<BodyRegion> regions = EnumSet.noneOf(BodyRegion.class);
        keys.forEach(key -> regions.add(zone(key).region()));
        return regions;
    }

    /** Returns the keys of all zones that arrow keys lead to from this one, itself included. */
    public Set<String> reachableFrom(String key) {
        Set<String> seen = new HashSet<>(Set.of(zone(key).key()));
        Deque<String> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            for (String next : zones.get(open.pop()).neighbours().values()) {
                if (seen.add(next)) {
                    open.push(next);
                }
            }
        }
        return seen;
    }
}
