package org.steadwork.workplace.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Tries equipment, one by one and together, and says what each would remove from the best setting with what is there. */
final class EquipmentSearch {

    private static final double HAIR = 1e-6;
    private static final int LONGEST_LIST = 3;
    private static final Equipment[] ALL = Equipment.values();

    private final FitModel today;
    private final Settings best;
    private final double cost;

    EquipmentSearch(FitModel today, Settings best) {
        this.today = today;
        this.best = best;
        this.cost = today.cost(best);
    }

    /** A work place with some equipment in it, set as well as it can be. */
    private record Trial(Equipment[] pieces, FitModel with, Settings settings, double remains) {
    }

    /** Returns each piece that removes something, the one that removes most first; then the smaller one. */
    List<EquipmentGain> oneByOne() {
        List<EquipmentGain> gains = new ArrayList<>();
        if (cost > HAIR) {
            for (Equipment piece : ALL) {
                better(today.at(piece.addedTo(today)), cost, piece).ifPresent(trial -> gains.add(gain(trial)));
            }
        }
        gains.sort(Comparator.comparingDouble(EquipmentGain::removes).reversed().thenComparingDouble(gain -> gain.items().get(0).size()));
        return List.copyOf(gains);
    }

    /** Returns the shortest list, of at most three pieces, that leaves as little as any such list; none if nothing helps. */
    Optional<EquipmentGain> shortestList() {
        Trial found = null;
        double least = cost;
        for (int length = 1; length <= LONGEST_LIST && least > HAIR; length++) {
            Trial better = longer(today, 0, new Equipment[length], 0, least);
            if (better != null) {
                found = better;
                least = better.remains;
            }
        }
        return Optional.ofNullable(found).map(this::gain);
    }

    /** Goes through every list that begins with what is chosen; null when none leaves less than {@code least}. */
    private Trial longer(FitModel with, int from, Equipment[] chosen, int length, double least) {
        if (length == chosen.length) {
            return better(with, least, chosen).orElse(null);
        }
        Trial found = null;
        for (int i = from; i < ALL.length; i++) {
            FitModel more = with.at(ALL[i].addedTo(with));
            if (more != with) {
                chosen[length] = ALL[i];
                Trial trial = longer(more, i + 1, chosen, length + 1, found == null ? least : found.remains);
                found = trial == null ? found : trial;
            }
        }
        return found;
    }

    /** Returns what a list gives, if it leaves less than {@code least} and every piece of it is used. */
    private Optional<Trial> better(FitModel with, double least, Equipment... pieces) {
        Scan scan = new Scan(with);
        if (!(with.cost(scan.bestByCost(with.body())) < least - HAIR)) {
            return Optional.empty();
        }
        Settings settings = scan.best();
        return Optional.of(new Trial(pieces.clone(), with, settings, with.cost(settings))).filter(this::isUsed);
    }

    /** Tells whether every piece of a list does something in the setting that is best with it. */
    private boolean isUsed(Trial trial) {
        for (Equipment piece : trial.pieces) {
            if (!(piece.size(today, trial.with, trial.settings) > HAIR)) {
                return false;
            }
        }
        return true;
    }

    private EquipmentGain gain(Trial trial) {
        List<EquipmentGain.Item> items = new ArrayList<>();
        for (Equipment piece : trial.pieces) {
            items.add(new EquipmentGain.Item(piece, piece.size(today, trial.with, trial.settings)));
        }
        List<Deviation> cleared = new ArrayList<>();
        for (Deviation deviation : Deviation.values()) {
            if (today.verdict(deviation, best).isOff() && !trial.with.verdict(deviation, trial.settings).isOff()) {
                cleared.add(deviation);
            }
        }
        return new EquipmentGain(List.copyOf(items), cost - trial.remains, trial.remains, trial.settings, trial.with.deviations(trial.settings),
                cleared, trial.with.station());
    }
}
