package org.steadwork.casemap;

import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.casefile.CardKey;
import org.steadwork.casefile.CardKind;
import org.steadwork.casefile.Link;
import org.steadwork.casefile.MapCard;
import org.steadwork.casefile.MapMeasure;
import org.steadwork.casefile.NextStep;
import org.steadwork.casemap.ranking.Candidate;
import org.steadwork.casemap.ranking.Complaint;
import org.steadwork.casemap.ranking.Ranking;
import org.steadwork.casemap.ranking.WorkFinding;
import org.steadwork.drawing.TrendChart;

/** Lays cards, decisions and candidates out as a map. */
final class MapBuilder {

    /** Undecided candidates shown at once: more threads than this cannot be read. */
    static final int MOST_CANDIDATES = 8;

    private final List<Link> links;
    private final Strengths strengths;
    private final Map<CardKey, MapCard> cards = new LinkedHashMap<>();
    private final List<MapCard> symptoms;
    private final List<MapCard> findings;
    private final List<MapCard> actions;
    private final List<Candidate> undecided;
    /** Every pair that is drawn; true when confirmed or agreed, false for a candidate. */
    private final Map<Pair, Boolean> drawn = new LinkedHashMap<>();
    private final Map<CardKey, String> labels = new HashMap<>();
    private final Map<CardKey, Integer> rows = new HashMap<>();

    private record Pair(CardKey from, CardKey to) {
    }

    MapBuilder(List<MapCard> given, List<Link> links, Strengths strengths) {
        this.links = links;
        this.strengths = strengths;
        given.stream().filter(card -> !spent(card, given)).forEach(card -> cards.putIfAbsent(card.key(), card));
        symptoms = ofKind(CardKind.SYMPTOM);
        List<Candidate> candidates = Ranking.of(symptoms.stream().map(c -> new Complaint(c.key().ref(), c.regions())).toList(),
                ofKind(CardKind.FINDING).stream().filter(c -> c.grounds() != null).map(this::workFinding).toList());
        undecided = candidates.stream().filter(c -> links.stream().noneMatch(l -> l.between(from(c), to(c)))).toList();
        draw();
        findings = findingsInOrder(candidates);
        actions = actionsInOrder();
        number(symptoms, "1");
        number(findings, "A");
        number(actions, "a");
    }

    /** A finding that is in range again stays only while something on the map hangs on it. */
    private boolean spent(MapCard card, List<MapCard> given) {
        return card.key().kind() == CardKind.FINDING && card.settled() && !card.regions().isEmpty()
                && links.stream().noneMatch(link -> link.from().equals(card.key()) || link.to().equals(card.key()))
                && given.stream().noneMatch(other -> other.answers().contains(card.key()));
    }

    private List<MapCard> ofKind(CardKind kind) {
        return cards.values().stream().filter(card -> card.key().kind() == kind).toList();
    }

    private WorkFinding workFinding(MapCard card) {
        MapCard.Grounds g = card.grounds();
        return new WorkFinding(card.key().ref(), card.regions(), g.deviation(), g.hoursADay(), strengths.of(g.evidence()).weight());
    }

    private static CardKey from(Candidate candidate) {
        return new CardKey(CardKind.SYMPTOM, candidate.complaint().ref());
    }

    private static CardKey to(Candidate candidate) {
        return new CardKey(CardKind.FINDING, candidate.finding().ref());
    }

    private void draw() {
        for (Link link : links) {
            if (link.confirmed() && cards.containsKey(link.from()) && cards.containsKey(link.to())) {
                drawn.put(new Pair(link.from(), link.to()), true);
            }
        }
        agreed().forEach(pair -> drawn.putIfAbsent(pair, true));
        shownCandidates().forEach(c -> drawn.putIfAbsent(new Pair(from(c), to(c)), false));
    }

    /** What an action was agreed for is tied without asking, unless a clinician rejected it. */
    private List<Pair> agreed() {
        List<Pair> pairs = new ArrayList<>();
        for (MapCard action : ofKind(CardKind.ACTION)) {
            for (CardKey finding : action.answers()) {
                if (cards.containsKey(finding) && links.stream().noneMatch(l -> l.between(finding, action.key()))) {
                    pairs.add(new Pair(finding, action.key()));
                }
            }
        }
        pairs.sort(Comparator.comparing(pair -> pair.from().text()));
        return pairs;
    }

    private List<Candidate> shownCandidates() {
        return undecided.subList(0, Math.min(MOST_CANDIDATES, undecided.size()));
    }

    /** Tied findings by the row of their symptom, then candidates by rank, then the rest; in range at the end. */
    private List<MapCard> findingsInOrder(List<Candidate> candidates) {
        List<CardKey> ranked = candidates.stream().map(MapBuilder::to).toList();
        List<CardKey> rank = new ArrayList<>();
        for (MapCard symptom : symptoms) {
            drawn.forEach((pair, confirmed) -> {
                if (confirmed && pair.from().equals(symptom.key())) {
                    rank.add(pair.to());
                }
            });
        }
        rank.addAll(ranked);
        return ofKind(CardKind.FINDING).stream()
                .sorted(Comparator.comparing(MapCard::settled).thenComparing(card -> place(rank, card.key()))).toList();
    }

    private List<MapCard> actionsInOrder() {
        List<CardKey> findingOrder = findings.stream().map(MapCard::key).toList();
        return ofKind(CardKind.ACTION).stream().sorted(Comparator.comparing(card -> drawn.keySet().stream()
                .filter(pair -> pair.to().equals(card.key())).mapToInt(pair -> place(findingOrder, pair.from())).min().orElse(Integer.MAX_VALUE)))
                .toList();
    }

    private static int place(List<CardKey> order, CardKey key) {
        int index = order.indexOf(key);
        return index < 0 ? Integer.MAX_VALUE : index;
    }

    private void number(List<MapCard> column, String first) {
        int next = 0;
        for (int i = 0; i < column.size(); i++) {
            MapCard card = column.get(i);
            rows.put(card.key(), i);
            boolean named = !(card.key().kind() == CardKind.FINDING && card.settled() && card.regions().isEmpty());
            labels.put(card.key(), named ? label(first, next) : "");
            next += named ? 1 : 0;
        }
    }

    private static String label(String first, int index) {
        if (first.equals("1")) {
            return String.valueOf(index + 1);
        }
        char letter = (char) (first.charAt(0) + index % 26);
        return index < 26 ? String.valueOf(letter) : letter + String.valueOf(index / 26 + 1);
    }

    MapView build(NextStep nextStep, List<MapMeasure> measures) {
        int tallest = Math.max(1, Math.max(symptoms.size(), Math.max(findings.size(), actions.size())));
        List<MapView.Figure> others = measures.stream().filter(m -> !m.main()).map(m -> figure(m, TrendChart.multiple(m.trend()))).toList();
        MapView.Figure main = measures.stream().filter(MapMeasure::main).findFirst().map(m -> figure(m, TrendChart.figure(m.trend()))).orElse(null);
        return new MapView(cells(symptoms), cells(findings), cells(actions), tallest, threads(CardKind.SYMPTOM), threads(CardKind.FINDING),
                ties(), rejected(), undecided.size() - shownCandidates().size(), nextStep, main, others);
    }

    private static MapView.Figure figure(MapMeasure measure, String svg) {
        return new MapView.Figure(measure, new RawString(svg), TrendChart.alternative(measure.trend()));
    }

    private List<MapView.Cell> cells(List<MapCard> column) {
        TieWords words = new TieWords();
        return column.stream().map(card -> new MapView.Cell(labels.get(card.key()), card, words.of(card))).toList();
    }

    private List<MapView.Thread> threads(CardKind from) {
        return drawn.entrySet().stream().filter(e -> e.getKey().from().kind() == from)
                .map(e -> MapView.Thread.between(rows.get(e.getKey().from()), rows.get(e.getKey().to()), e.getValue())).toList();
    }

    private String title(CardKey key, String otherwise) {
        MapCard card = cards.get(key);
        return card == null ? otherwise : (labels.get(key) + " " + card.title()).strip();
    }

    private List<Tie> ties() {
        List<Tie> ties = new ArrayList<>();
        for (Candidate c : shownCandidates()) {
            ties.add(Tie.candidate(ties.size() + 1, from(c), title(from(c), ""), to(c), title(to(c), ""), why(cards.get(to(c)).grounds())));
        }
        links.stream().filter(Link::confirmed).forEach(link -> ties.add(tie(ties.size() + 1, link)));
        agreed().forEach(pair -> ties.add(Tie.agreed(ties.size() + 1, pair.from(), title(pair.from(), ""), pair.to(), title(pair.to(), ""))));
        return ties;
    }

    private List<Tie> rejected() {
        List<Tie> ties = new ArrayList<>();
        links.stream().filter(link -> !link.confirmed()).forEach(link -> ties.add(tie(ties.size() + 1, link)));
        return ties;
    }

    private Tie tie(int number, Link link) {
        boolean gone = !cards.containsKey(link.from()) || !cards.containsKey(link.to());
        return Tie.of(number, link, title(link.from(), link.fromTitle()), title(link.to(), link.toTitle()), gone);
    }

    /** The factors of the rank, as the clinician reads them. */
    private String why(MapCard.Grounds g) {
        return g.shown() + " × " + (g.hoursADay() == null ? "hours not recorded" : Amounts.hours(g.hoursADay())) + " × " + strengths.of(g.evidence()).words();
    }

    /** Why this pair would be drawn, or empty when it shares nothing; used on the page that decides about one pair. */
    String why(CardKey from, CardKey to) {
        boolean shares = cards.containsKey(from) && cards.containsKey(to) && cards.get(to).grounds() != null
                && cards.get(from).regions().stream().anyMatch(cards.get(to).regions()::contains);
        return shares ? why(cards.get(to).grounds()) : "";
    }

    String titleOf(CardKey key) {
        return title(key, "");
    }

    List<MapView.Cell> column(CardKind kind) {
        return cells(switch (kind) {
            case SYMPTOM -> symptoms;
            case FINDING -> findings;
            case ACTION -> actions;
        });
    }

    /** Says under a card what it is tied with. */
    private final class TieWords {

        String of(MapCard card) {
            List<String> words = new ArrayList<>();
            switch (card.key().kind()) {
                case SYMPTOM -> words.add(with("With ", "perhaps ", outOf(card, true), outOf(card, false)));
                case FINDING -> {
                    words.add(with("With ", "perhaps ", into(card, true), into(card, false)));
                    words.add(with("Answered by ", "perhaps ", outOf(card, true), outOf(card, false)));
                }
                case ACTION -> {
                    words.add(with("For ", "perhaps ", into(card, true), into(card, false)));
                    if (into(card, true).isEmpty()) {
                        words.add(with("Straight for ", "", straight(card), List.of()));
                    }
                }
            }
            words.removeIf(String::isEmpty);
            return words.isEmpty() ? "No tie" : String.join(". ", words);
        }

        private String with(String certain, String perhaps, List<String> confirmed, List<String> candidates) {
            String first = confirmed.isEmpty() ? "" : certain + String.join(", ", confirmed);
            String second = candidates.isEmpty() ? "" : perhaps + String.join(", ", candidates);
            if (first.isEmpty() && !second.isEmpty()) {
                return Character.toUpperCase(second.charAt(0)) + second.substring(1).replaceFirst("^erhaps ", "erhaps with ");
            }
            return second.isEmpty() ? first : first + "; " + second;
        }

        private List<String> outOf(MapCard card, boolean confirmed) {
            return drawn.entrySet().stream().filter(e -> e.getKey().from().equals(card.key()) && e.getValue() == confirmed)
                    .map(e -> labels.get(e.getKey().to())).sorted().toList();
        }

        private List<String> into(MapCard card, boolean confirmed) {
            return drawn.entrySet().stream().filter(e -> e.getKey().to().equals(card.key()) && e.getValue() == confirmed)
                    .map(e -> labels.get(e.getKey().from())).sorted().toList();
        }

        /** An exercise for a region answers the complaint there, without a finding between. */
        private List<String> straight(MapCard action) {
            Set<String> found = new HashSet<>();
            symptoms.stream().filter(s -> s.regions().stream().anyMatch(action.regions()::contains)).forEach(s -> found.add(labels.get(s.key())));
            return found.stream().sorted().toList();
        }
    }
}
