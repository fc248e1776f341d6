package org.steadwork.caseload;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Parts the people of an employer into places with enough people each, so that every place's number of people can stand in every table:
 * departments of their own from so many people on, what is left of a site together, small sites together. Where what is left is too
 * small, it goes with the smallest place that is not. Nobody is left out and nobody stands in two.
 */
final class ReportPlaces {

    private static final String UNKNOWN = "Site not known";
    private static final String OTHERS = "Other places";

    private ReportPlaces() {
    }

    /** Returns the places by name; empty when there are too few people altogether. */
    static Optional<Map<String, List<ReportPerson>>> of(List<ReportPerson> people, int fewest) {
        if (people.size() < fewest) {
            return Optional.empty();
        }
        Map<String, List<ReportPerson>> sites = new TreeMap<>();
        people.forEach(person -> sites.computeIfAbsent(person.site() == null ? UNKNOWN : person.site(), site -> new ArrayList<>()).add(person));
        Map<String, List<ReportPerson>> places = new TreeMap<>();
        List<ReportPerson> left = new ArrayList<>();
        sites.forEach((site, own) -> {
            if (own.size() < fewest) {
                left.addAll(own);
            } else {
                places.putAll(ofSite(site, own, fewest));
            }
        });
        while (!left.isEmpty() && left.size() < fewest) {
            String smallest = places.entrySet().stream().min(Comparator.comparingInt((Map.Entry<String, List<ReportPerson>> place) -> place.getValue().size())
                    .thenComparing(Map.Entry::getKey)).orElseThrow().getKey();
            left.addAll(places.remove(smallest));
        }
        Map<String, List<ReportPerson>> ordered = new LinkedHashMap<>(places);
        if (!left.isEmpty()) {
            ordered.put(places.isEmpty() ? "All places" : OTHERS, left);
        }
        return Optional.of(ordered);
    }

    /** The departments of a site when each of them, and what is left, is large enough; else the site whole. */
    private static Map<String, List<ReportPerson>> ofSite(String site, List<ReportPerson> people, int fewest) {
        Map<String, List<ReportPerson>> departments = new TreeMap<>();
        List<ReportPerson> left = new ArrayList<>();
        people.forEach(person -> {
            if (person.department() == null) {
                left.add(person);
            } else {
                departments.computeIfAbsent(person.department(), name -> new ArrayList<>()).add(person);
            }
        });
        Map<String, List<ReportPerson>> large = new TreeMap<>();
        departments.forEach((name, own) -> {
            if (own.size() >= fewest) {
                large.put(site + ", " + name, own);
            } else {
                left.addAll(own);
            }
        });
        if (large.isEmpty() || !left.isEmpty() && left.size() < fewest) {
            return Map.of(site, people);
        }
        if (!left.isEmpty()) {
            large.put(site + ", other departments", left);
        }
        return large;
    }
}
