package org.steadwork.workplace.fit;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/**
 * The share of a population that a range of furniture serves: for whom some setting leaves nothing out of the accepted band.
 * People are drawn; each is fitted as one person is. Holds for people like those of the population, not for anyone in particular.
 *
 * @param people how many were drawn
 * @param served share for whom a setting serves, in [0, 1]
 * @param standardError of that share, from drawing alone: √(p(1 − p) ÷ n)
 * @param firstFailing share of all people by the first deviation that their best setting leaves off, in the order clearance,
 *     feet, elbow, screen, knee gap, distance, armrest; with {@code served} these add up to 1
 * @param failing share of all people whose best setting leaves this deviation off, first or not
 */
public record Accommodation(int people, double served, double standardError, Map<Deviation, Double> firstFailing, Map<Deviation, Double> failing) {

    /** The order in which a setting is chosen: what comes first is kept right at the cost of what comes later. */
    private static final Deviation[] ORDER = {Deviation.CLEARANCE, Deviation.FEET, Deviation.ELBOW, Deviation.SCREEN_DROP, Deviation.KNEE_GAP,
        Deviation.DISTANCE, Deviation.ARMREST};

    /**
     * Draws people and fits each to the furniture; well under a second for 100,000.
     *
     * @param womenShare share of women, in [0, 1]
     * @param station the ranges of the furniture; today's settings fix what has no range
     * @param targets with the bands that are to be met; {@link Targets#loosened()} for not out of range rather than in range
     * @param people in [100, 1,000,000]
     * @throws IllegalArgumentException for another share or number, or without a seat and a desk
     */
    public static Accommodation of(Population population, double womenShare, Lenses lenses, Workstation station, Targets targets, int people,
            long seed) {
        if (!(womenShare >= 0 && womenShare <= 1)) {
            throw new IllegalArgumentException("The share of women must be from 0 to 1, but was " + womenShare);
        }
        if (!(people >= 100 && people <= 1_000_000)) {
            throw new IllegalArgumentException("From 100 to 1,000,000 people are drawn, but there were to be " + people);
        }
        Population.Draws draws = population.new Draws(new SplittableRandom(seed), womenShare, targets.allowances());
        return count(lenses, station, targets, people, draws::next);
    }

    /** Fits every one of a number of bodies. */
    static Accommodation count(Lenses lenses, Workstation station, Targets targets, int people, Supplier<Body> next) {
        FitModel model = new FitModel(Person.of(Map.of(), lenses), station, targets);
        Scan scan = new Scan(model);
        int[] first = new int[ORDER.length];
        int[] all = new int[ORDER.length];
        int served = 0;
        for (int n = 0; n < people; n++) {
            Body body = next.get();
            Settings best = scan.bestByCost(body);
            boolean fits = true;
            for (int i = 0; i < ORDER.length; i++) {
                if (model.target(ORDER[i]).green().misses(model.deviation(ORDER[i], best, body))) {
                    first[i] += fits ? 1 : 0;
                    all[i]++;
                    fits = false;
                }
            }
            served += fits ? 1 : 0;
        }
        double share = (double) served / people;
        return new Accommodation(people, share, Math.sqrt(share * (1 - share) / people), shares(first, people), shares(all, people));
    }

    private static Map<Deviation, Double> shares(int[] counts, int people) {
        Map<Deviation, Double> shares = new EnumMap<>(Deviation.class);
        for (int i = 0; i < ORDER.length; i++) {
            shares.put(ORDER[i], (double) counts[i] / people);
        }
        return shares;
    }
}
