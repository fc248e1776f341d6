package org.steadwork.outcome.scoring;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A risk screen whose total, with the sum of some of its items, puts a person in a group.
 *
 * <p>An item counts its answer, or, where it has steps, how many of them the answer reaches. A missing item is never filled in: the
 * total gets bounds, and the groups that any completion can give are all named; only one group is a classification (a rule of ours).
 *
 * @param steps by item number: the answers at which a further point begins, rising
 * @param subscale the name of the sum beside the total, blank when there is none
 * @param first first item of that sum; {@code last} likewise, included
 * @param groups from the highest to the lowest; the first whose bounds are reached holds, and the last takes everybody
 * Source: Hill et al., Arthritis Rheum 2008 (nine items); Dunn et al., Eur J Pain 2021 (ten items).
 */
public record RiskGroups(Map<Integer, List<Integer>> steps, String subscale, int first, int last, List<Group> groups) implements ScoringRule {

    /** A group: the least total and the least sum of the subscale for it, 0 where one does not matter. */
    public record Group(String name, int totalFrom, int subscaleFrom) {
    }

    private record Sums(int total, int part) {
    }

    public RiskGroups {
        steps = Map.copyOf(steps);
        groups = List.copyOf(groups);
        if (groups.isEmpty() || groups.get(groups.size() - 1).totalFrom() > 0 || groups.get(groups.size() - 1).subscaleFrom() > 0) {
            throw new IllegalArgumentException("The last group must take everybody");
        }
    }

    @Override
    public Scored score(ItemAnswers answers) {
        if (answers.answered() == 0) {
            return Scored.none(answers, "No score: nothing answered");
        }
        Set<Sums> reachable = Set.of(new Sums(0, 0));
        for (int i = 0; i < answers.items().size(); i++) {
            reachable = with(reachable, answers.items().get(i), answers.values().get(i));
        }
        Set<Sums> sums = reachable;
        List<String> possible = groups.stream().filter(group -> sums.stream().anyMatch(sum -> group.equals(group(sum)))).map(Group::name).toList();
        int low = sums.stream().mapToInt(Sums::total).min().getAsInt();
        int high = sums.stream().mapToInt(Sums::total).max().getAsInt();
        String named = possible.size() == 1 ? possible.get(0) : "undetermined, one of " + String.join(", ", possible);
        if (!answers.complete()) {
            return Scored.between(low, high, answers, "Total between " + low + " and " + high + ", whatever the missing answers are: " + named)
                    .grouped(possible);
        }
        int part = sums.iterator().next().part();
        String beside = subscale.isEmpty() ? "" : ", " + subscale + " " + part;
        Map<String, Double> parts = subscale.isEmpty() ? Map.of() : Map.of(subscale, (double) part);
        return Scored.of(low, parts, answers, "Total " + low + beside + ": " + named).grouped(possible);
    }

    private Set<Sums> with(Set<Sums> reachable, Item item, Integer answer) {
        boolean inPart = item.number() >= first && item.number() <= last;
        int[] points = (answer == null ? IntStream.rangeClosed(item.min(), item.max()) : IntStream.of(answer))
                .map(value -> points(item, value)).distinct().toArray();
        Set<Sums> next = new HashSet<>();
        for (Sums sum : reachable) {
            for (int point : points) {
                next.add(new Sums(sum.total() + point, sum.part() + (inPart ? point : 0)));
            }
        }
        return next;
    }

    private int points(Item item, int answer) {
        List<Integer> own = steps.get(item.number());
        return own == null ? answer : (int) own.stream().filter(step -> answer >= step).count();
    }

    private Group group(Sums sums) {
        return groups.stream().filter(group -> sums.total() >= group.totalFrom() && sums.part() >= group.subscaleFrom()).findFirst().orElseThrow();
    }

    @Override
    public String words() {
        List<String> words = new ArrayList<>();
        for (Group group : groups) {
            words.add(group.name() + (group.totalFrom() == 0 && group.subscaleFrom() == 0 ? " otherwise"
                    : " from a total of " + group.totalFrom() + (group.subscaleFrom() == 0 ? "" : " with " + subscale + " from " + group.subscaleFrom())));
        }
        return "sum of the items; " + String.join(", ", words) + "; missing items give bounds and every possible group";
    }
}
