package org.steadwork.workplace.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One desk for several people, who each have the chair's settings to themselves: what each sets where the desk can be set, and
 * what they can share. The shared desk height is chosen first, then, at that height, one footrest, then, with both, one height
 * of the screen: each so that the fewest are left out, then the least is left out of range in all, then all are nearest to
 * their aims. Lengths in mm, people in the order given.
 *
 * @param own each person's best settings with the desk as it can be set; a footrest that is not there is taken as obtainable
 * @param fixed each person's best settings with the desk fixed at the height that serves them best together
 * @param footrest the same with one footrest of one height; empty when nobody needs one
 * @param screen the same with the screen at one height above the desk; empty when no eye height is known
 */
public record SharedDesk(List<Place> own, Sharing fixed, Optional<Sharing> footrest, Optional<Sharing> screen) {

    private static final double STEP = 5;
    private static final double HAIR = 1e-6;

    /**
     * One person's settings.
     *
     * @param misses the deviations that are not in range
     */
    public record Place(Settings settings, List<Miss> misses) {

        /** Tells whether something is out of range, not merely near the edge. */
        public boolean leftOut() {
            return misses.stream().anyMatch(miss -> miss.verdict() == Verdict.OUT_OF_RANGE);
        }
    }

    /**
     * A deviation that is not in range.
     *
     * @param off the deviation, signed as in {@link FitModel}
     * @param beyond how far outside the green band, more than 0
     */
    public record Miss(Deviation deviation, double off, double beyond, Verdict verdict) {
    }

    /**
     * Something shared.
     *
     * @param height of the desk above the floor, of the footrest above the floor, or of the screen top above the desk
     * @param places everyone's settings with it
     */
    public record Sharing(double height, List<Place> places) {

        public long leftOut() {
            return places.stream().filter(Place::leftOut).count();
        }
    }

    /**
     * Works out what people can share.
     *
     * @param people from 1 to 50, each with popliteal and elbow rest height known
     * @param heights among which the shared desk height is chosen, every 5 mm or at its wider step
     * @throws IllegalArgumentException when something it cannot do without was not looked at, see {@link FitSolver#missing}
     */
    public static SharedDesk of(List<Person> people, Workstation station, Targets targets, Travel heights) {
        if (people.isEmpty() || people.size() > 50) {
            throw new IllegalArgumentException("A desk is shared by 1 to 50 people, but there were " + people.size());
        }
        people.forEach(person -> FitSolver.requireEnough(person, station));
        Workstation withFootrest = station.travelOrNull(Part.FOOTREST) != null ? station
                : station.with(Part.FOOTREST, targets.obtainable().footrest());
        Search search = new Search(people, targets);
        List<Place> own = search.places(withFootrest);
        Sharing fixed = search.best(withFootrest, Part.DESK, heights);
        Workstation atHeight = withFootrest.with(Part.DESK, Travel.fixed(fixed.height));
        boolean needed = fixed.places.stream().anyMatch(place -> place.settings.footrest() > 0);
        Optional<Sharing> footrest = !needed ? Optional.empty()
                : Optional.of(search.best(atHeight, Part.FOOTREST, withFootrest.travelOrNull(Part.FOOTREST)));
        Workstation withOne = footrest.map(one -> atHeight.with(Part.FOOTREST, Travel.fixed(one.height))).orElse(atHeight);
        Travel screens = station.travel(Part.SCREEN_TOP).orElse(targets.obtainable().screen());
        boolean eyes = people.stream().anyMatch(person -> person.measure(BodyMeasure.EYE_HEIGHT_SITTING).known());
        Optional<Sharing> screen = eyes ? Optional.of(search.best(withOne, Part.SCREEN_TOP, screens)) : Optional.empty();
        return new SharedDesk(own, fixed, footrest, screen);
    }

    /** Tries one height of a part after the other for all people together. */
    private record Search(List<Person> people, Targets targets) {

        Sharing best(Workstation station, Part part, Travel offered) {
            Travel tried = new Travel(offered.low(), offered.high(), Math.max(STEP, offered.step()));
            double[] least = null;
            double best = Double.NaN;
            for (int i = 0; i < tried.settings(); i++) {
                double[] score = score(station.with(part, Travel.fixed(tried.setting(i))));
                if (least == null || before(score, least)) {
                    least = score;
                    best = tried.setting(i);
                }
            }
            return new Sharing(best, places(station.with(part, Travel.fixed(best))));
        }

        private static boolean before(double[] score, double[] least) {
            for (int i = 0; i < score.length; i++) {
                if (Math.abs(score[i] - least[i]) > HAIR) {
                    return score[i] < least[i];
                }
            }
            return false;
        }

        /** How many are left out, thigh contact (mm), weighted mm out of range, squared mm from the aims. */
        private double[] score(Workstation station) {
            double[] score = new double[4];
            for (Person person : people) {
                FitModel model = new FitModel(person, station, targets);
                Settings settings = new Scan(model).best();
                boolean leftOut = false;
                for (Deviation deviation : Deviation.values()) {
                    leftOut |= model.verdict(deviation, settings) == Verdict.OUT_OF_RANGE;
                }
                Objective objective = Objective.of(model, settings);
                score[0] += leftOut ? 1 : 0;
                score[1] += objective.contact();
                score[2] += model.cost(settings);
                score[3] += objective.squares();
            }
            return score;
        }

        List<Place> places(Workstation station) {
            List<Place> places = new ArrayList<>();
            for (Person person : people) {
                FitModel model = new FitModel(person, station, targets);
                Settings settings = new Scan(model).best();
                List<Miss> misses = new ArrayList<>();
                for (Deviation deviation : Deviation.values()) {
                    double off = model.deviation(deviation, settings);
                    Verdict verdict = model.verdict(deviation, settings);
                    if (verdict.isOff()) {
                        misses.add(new Miss(deviation, off, model.target(deviation).green().outside(off), verdict));
                    }
                }
                places.add(new Place(settings, List.copyOf(misses)));
            }
            return List.copyOf(places);
        }
    }
}
