package org.steadwork.workplace.fit;

import java.util.function.Function;

/** Something that can be asked for when the work place does not fit. */
public enum Equipment {
    FOOTREST(Equipment::withFootrest),
    SCREEN_RISER(model -> model.station().laptop().isPresent() ? model.station()
            : model.widenedStation(Part.SCREEN_TOP, model.obtainable().screen())),
    DESK_BLOCKS(model -> model.station().travel(Part.DESK)
            .map(desk -> model.station().with(Part.DESK, Travel.of(desk.low(), desk.high() + model.obtainable().blocks()))).orElseThrow()),
    ADJUSTABLE_DESK(model -> model.widenedStation(Part.DESK, model.obtainable().desk())),
    KEYBOARD_TRAY(Equipment::withTray),
    THINNER_TOP(model -> model.station().withTopThickness(Math.min(model.station().topThickness(), model.obtainable().thinTop()))),
    FLAT_KEYBOARD(model -> model.station().laptop().isPresent() || model.station().homeRow() < 0 ? model.station()
            : model.station().withHomeRow(Math.min(model.station().homeRow(), model.obtainable().flatKeyboard()))),
    OTHER_CHAIR(model -> model.at(model.widenedStation(Part.SEAT, model.obtainable().seat()))
            .widenedStation(Part.SEAT_DEPTH, model.obtainable().seatDepth())),
    BACKREST_CUSHION(Equipment::withCushion),
    ARMRESTS_OFF(model -> model.station().withoutArmrests()),
    LAPTOP_SET(model -> model.station().laptop().isPresent()
            ? model.station().withLaptopRaised(model.targets().allowances().homeRow()) : model.station());

    private final Function<FitModel, Workstation> effect;

    Equipment(Function<FitModel, Workstation> effect) {
        this.effect = effect;
    }

    /** Returns the work place with this in it; the same work place when it changes nothing. */
    Workstation addedTo(FitModel model) {
        return effect.apply(model);
    }

    /**
     * Returns how much of it a setting uses, in mm: the height of a footrest, what a riser or blocks add, by how much a
     * tray lowers the keys, what a top or keyboard is thinner, how far another seat goes beyond the present one.
     */
    double size(FitModel before, FitModel after, Settings used) {
        Workstation today = before.station();
        return switch (this) {
            case FOOTREST -> used.footrest();
            case SCREEN_RISER -> beyond(today, Part.SCREEN_TOP, used.screenTop() - used.desk());
            case LAPTOP_SET -> today.laptop().map(laptop -> used.screenTop() - used.desk() - laptop.screenTop()).orElse(0.0);
            case DESK_BLOCKS, ADJUSTABLE_DESK -> beyond(today, Part.DESK, used.desk());
            case KEYBOARD_TRAY, FLAT_KEYBOARD -> today.homeRow() - after.station().homeRow();
            case THINNER_TOP -> today.topThickness() - after.station().topThickness();
            case OTHER_CHAIR -> Math.max(beyond(today, Part.SEAT, used.seat()), beyond(today, Part.SEAT_DEPTH, used.seatDepth()));
            case BACKREST_CUSHION -> used.cushion() - today.present().cushion();
            case ARMRESTS_OFF -> today.present().of(Part.ARMREST).isPresent() || today.looksAt(Part.ARMREST) ? 1 : 0;
        };
    }

    private static double beyond(Workstation today, Part part, double value) {
        return today.travel(part).map(travel -> Math.abs(value - travel.clip(value))).orElse(0.0);
    }

    private static Workstation withFootrest(FitModel model) {
        Travel offered = Travel.of(model.obtainable().footrest().low(), model.obtainable().platform());
        return model.station().travel(Part.FOOTREST).isPresent() ? model.widenedStation(Part.FOOTREST, offered)
                : model.station().with(Part.FOOTREST, offered);
    }

    /** The tray lowers the keys and, with them, what is over the thighs; the depth that leaves the better setting is taken. */
    private static Workstation withTray(FitModel model) {
        double above = model.deviation(Deviation.ELBOW, new Scan(model).best());
        Target elbow = model.target(Deviation.ELBOW);
        if (!(above > elbow.green().high())) {
            return model.station();
        }
        Workstation toAim = trayed(model, above - elbow.aim());
        Workstation toEdge = trayed(model, above - elbow.green().high());
        return objective(model, toEdge).compareTo(objective(model, toAim)) < 0 ? toEdge : toAim;
    }

    private static Workstation trayed(FitModel model, double wanted) {
        double lower = Math.min(model.obtainable().tray(), 5 * Math.ceil(wanted / 5 - 1e-9));
        return model.station().withHomeRow(model.station().homeRow() - lower).withTopThickness(model.station().topThickness() + lower);
    }

    private static Objective objective(FitModel model, Workstation station) {
        FitModel changed = model.at(station);
        return Objective.of(changed, new Scan(changed).best());
    }

    private static Workstation withCushion(FitModel model) {
        double gap = model.thighLength() - new PartsBeside(model).seatDepth(model.body()) + model.station().present().cushion();
        Target target = model.target(Deviation.KNEE_GAP);
        if (!(gap < target.green().low())) {
            return model.station();
        }
        double thickness = model.station().present().cushion() + target.aim() - gap;
        return model.station().withCushion(Math.min(model.obtainable().cushion(), thickness));
    }
}
