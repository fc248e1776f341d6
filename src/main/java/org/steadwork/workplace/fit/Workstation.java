package org.steadwork.workplace.fit;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A seated work place: how far each part can be set, how it is set today, and the sizes that do not change. All mm.
 * The travel of the screen is that of its top edge above the desk top; a screen without travel can be placed freely.
 * Any other part without travel stays as it is today. Without travel for a footrest, and none in use today, there is none.
 */
public final class Workstation {

    private final Map<Part, Travel> travels;
    private final Settings present;
    private final double homeRow;
    private final double topThickness;
    private final Laptop laptop;

    private Workstation(Map<Part, Travel> travels, Settings present, double homeRow, double topThickness, Laptop laptop) {
        this.travels = new EnumMap<>(Part.class);
        this.travels.putAll(travels);
        this.present = present;
        this.homeRow = homeRow;
        this.topThickness = topThickness;
        this.laptop = laptop;
        if (!(homeRow >= -300 && homeRow <= 200)) {
            throw new IllegalArgumentException("The home row must be between −300 and 200 mm above the desk top, but was " + homeRow);
        }
        if (!(topThickness >= 0 && topThickness <= 300)) {
            throw new IllegalArgumentException("The desk top must be between 0 and 300 mm thick, but was " + topThickness);
        }
    }

    /**
     * @param homeRow home row above the desk top, in [−300, 200]; below 0 with a keyboard tray
     * @param topThickness desk top and frame (with a tray: down to the tray's underside), in [0, 300]
     */
    public static Workstation of(Map<Part, Travel> travels, Settings present, double homeRow, double topThickness) {
        return new Workstation(travels, present, homeRow, topThickness, null);
    }

    /** Returns this work place with a laptop used alone: its keys and its screen top stand at fixed heights above the desk. */
    public Workstation withLaptopAlone(Laptop computer) {
        Map<Part, Travel> changed = copy();
        changed.put(Part.SCREEN_TOP, Travel.fixed(computer.screenTop()));
        Settings today = Double.isNaN(present.desk()) ? present : present.with(Part.SCREEN_TOP, present.desk() + computer.screenTop());
        return new Workstation(changed, today, computer.homeRow(), topThickness, computer);
    }

    public Workstation with(Part part, Travel travel) {
        Map<Part, Travel> changed = copy();
        changed.put(part, travel);
        return new Workstation(changed, present, homeRow, topThickness, laptop);
    }

    public Workstation withHomeRow(double height) {
        return height == homeRow ? this : new Workstation(travels, present, height, topThickness, laptop);
    }

    public Workstation withTopThickness(double thickness) {
        return thickness == topThickness ? this : new Workstation(travels, present, homeRow, thickness, laptop);
    }

    Workstation withCushion(double thickness) {
        return new Workstation(travels, present.with(Part.CUSHION, thickness), homeRow, topThickness, laptop);
    }

    /** Returns this work place without armrests; itself when it has none. */
    Workstation withoutArmrests() {
        if (travelOrNull(Part.ARMREST) == null) {
            return this;
        }
        Map<Part, Travel> changed = copy();
        changed.remove(Part.ARMREST);
        return new Workstation(changed, present.with(Part.ARMREST, Double.NaN), homeRow, topThickness, laptop);
    }

    Workstation withPresent(Settings settings) {
        return new Workstation(travels, settings, homeRow, topThickness, laptop);
    }

    /** Returns this work place with a separate keyboard and the laptop on a riser, its screen placed freely. */
    Workstation withLaptopRaised(double separateHomeRow) {
        Map<Part, Travel> changed = copy();
        changed.remove(Part.SCREEN_TOP);
        return new Workstation(changed, present, separateHomeRow, topThickness, null);
    }

    private Map<Part, Travel> copy() {
        Map<Part, Travel> changed = new EnumMap<>(Part.class);
        changed.putAll(travels);
        return changed;
    }

    /** Returns how far a part can be set; a part whose range is not known stays where it is today. */
    public Optional<Travel> travel(Part part) {
        return Optional.ofNullable(travelOrNull(part));
    }

    /** The same for the inner loops. */
    Travel travelOrNull(Part part) {
        Travel travel = travels.get(part);
        boolean placedFreely = part == Part.SCREEN_TOP || part == Part.DISTANCE || part == Part.CUSHION
                || part == Part.FOOTREST && present.footrest() == 0;
        double today = present.value(part);
        return travel == null && !placedFreely && !Double.isNaN(today) ? Travel.fixed(today) : travel;
    }

    public boolean looksAt(Part part) {
        return travels.containsKey(part);
    }

    public Settings present() {
        return present;
    }

    public double homeRow() {
        return homeRow;
    }

    public double topThickness() {
        return topThickness;
    }

    public Optional<Laptop> laptop() {
        return Optional.ofNullable(laptop);
    }

    /**
     * A laptop used as the main screen.
     *
     * @param screenTop top of its screen above the desk, in mm, in (0, 500]
     * @param homeRow its home row above the desk, in mm, in [0, 100]
     */
    public record Laptop(double screenTop, double homeRow) {

        public Laptop {
            if (!(screenTop > 0 && screenTop <= 500) || !(homeRow >= 0 && homeRow <= 100)) {
                throw new IllegalArgumentException("A laptop's screen top must be at most 500 mm and its home row at most 100 mm above the desk");
            }
        }
    }
}
