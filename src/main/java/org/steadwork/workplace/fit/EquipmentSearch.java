package org.steadwork.workplace.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Tries equipment, one by one and together, and says what each would remove from the best setting with what is there. */
final class EquipmentSearch {

    private static final double HAIR = 1e-6;
    private static final int LONGEST_LIST = 3;

    private final FitModel today;
    private final Settings best;
    private final double cost;

    EquipmentSearch(FitModel today, Settings best) {
        this.today = today;
        this.best = best;
        this.cost = today.cost(best);
    }

    /** Returns each piece that removes something, the one that removes most first; then the smaller one. */
    List<EquipmentGain> oneByOne() {
        List<EquipmentGain> gains = new ArrayList<>();
        if (cost > HAIR) {
            for (Equipment equipment : Equipment.values()) {
                gain(List.of(equipment)).filter(gain -> gain.removes() > HAIR).ifPresent(gains::add);
            }
        }
        gains.sort(Comparator.comparingDouble(EquipmentGain::removes).reversed().thenComparingDouble(gain -> gain.items().get(0).size()));
        return List.copyOf(gains);
    }

    /** Returns the shortest list, of at most three pieces, that leaves as little as any such list; none if nothing helps. */
    Optional<EquipmentGain> shortestList() {
        if (!(cost > HAIR)) {
            return Optional.empty();
        }
        List<Equipment> useful = new ArrayList<>();
        for (Equipment equipment : Equipment.values()) {
            if (equipment.addedTo(today) != today.station()) {
                useful.add(equipment);
            }
        }
        EquipmentGain found = null;
        for (int length = 1; length <= LONGEST_LIST && (found == null || found.remains() > HAIR); length++) {
            found = longer(useful, 0, new ArrayList<>(), length, found);
        }
        return Optional.ofNullable(found);
    }

    private EquipmentGain longer(List<Equipment> useful, int from, List<Equipment> chosen, int length, EquipmentGain found) {
        if (chosen.size() == length) {
            EquipmentGain gain = gain(chosen).orElse(null);
            boolean better = gain != null && gain.removes() > HAIR && (found == null || gain.remains() < found.remains() - HAIR);
            return better ? gain : found;
        }
        EquipmentGain least = found;
        for (int i = from; i < useful.size(); i++) {
            chosen.add(useful.get(i));
            least = longer(useful, i + 1, chosen, length, least);
            chosen.remove(chosen.size() - 1);
        }
        return least;
    }

    /** Returns what the pieces give together, unless one of them is not used at all. */
    private Optional<EquipmentGain> gain(List<Equipment> pieces) {
        FitModel changed = today;
        for (Equipment piece : pieces) {
            changed = new FitModel(today.person(), piece.addedTo(changed), today.targets());
        }
        Settings settings = new Scan(changed).best();
        List<EquipmentGain.Item> items = new ArrayList<>();
        for (Equipment piece : pieces) {
            double size = piece.size(today, changed, settings);
            if (!(size > HAIR)) {
                return Optional.empty();
            }
            items.add(new EquipmentGain.Item(piece, size));
        }
        List<Deviation> cleared = new ArrayList<>();
        for (Deviation deviation : Deviation.values()) {
            if (off(today.verdict(deviation, best)) && !off(changed.verdict(deviation, settings))) {
                cleared.add(deviation);
            }
        }
        double remains = changed.cost(settings);
        return Optional.of(new EquipmentGain(List.copyOf(items), cost - remains, remains, settings, changed.deviations(settings), cleared));
    }

    private static boolean off(Verdict verdict) {
        return verdict == Verdict.NEAR_THE_EDGE || verdict == Verdict.OUT_OF_RANGE;
    }
}
