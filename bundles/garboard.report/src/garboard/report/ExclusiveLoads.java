// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import garboard.model.ElectricalLoad;
import garboard.quantity.Ratio;

/**
 * Loads that never run together. A load says so by naming the other one, by its name or id, or by giving the same word as the other
 * one does.
 */
final class ExclusiveLoads {

    private ExclusiveLoads() {
    }

    /** {@return of each set of loads that exclude each other all but the one with the largest demand} */
    static Set<ElectricalLoad> leftOut(List<ElectricalLoad> loads) {
        var leftOut = new HashSet<ElectricalLoad>();
        for (List<ElectricalLoad> together : sets(loads)) {
            ElectricalLoad largest = together.getFirst();
            for (ElectricalLoad load : together) {
                largest = demandW(load) > demandW(largest) ? load : largest;
            }
            leftOut.addAll(together);
            leftOut.remove(largest);
        }
        return leftOut;
    }

    private static List<List<ElectricalLoad>> sets(List<ElectricalLoad> loads) {
        var sets = new ArrayList<List<ElectricalLoad>>();
        for (ElectricalLoad load : loads) {
            var merged = new ArrayList<ElectricalLoad>();
            for (List<ElectricalLoad> set : List.copyOf(sets)) {
                if (set.stream().anyMatch(other -> exclude(load, other))) {
                    merged.addAll(set);
                    sets.remove(set);
                }
            }
            merged.add(load);
            sets.add(merged);
        }
        return sets;
    }

    private static boolean exclude(ElectricalLoad one, ElectricalLoad other) {
        return names(one, other) || names(other, one) || Material.present(one.getExclusiveWith()).isPresent()
            && Material.present(one.getExclusiveWith()).equals(Material.present(other.getExclusiveWith()));
    }

    private static boolean names(ElectricalLoad one, ElectricalLoad other) {
        Optional<String> named = Material.present(one.getExclusiveWith());
        return named.isPresent() && (Objects.equals(named.get(), other.getId()) || named.equals(Material.present(other.getName())));
    }

    private static double demandW(ElectricalLoad load) {
        return load.getPower() == null ? 0 : load.getPower().si() / orOne(load.getEfficiency()) * orOne(load.getDemandFactor());
    }

    private static double orOne(Ratio ratio) {
        return ratio == null || ratio.si() <= 0 ? 1 : ratio.si();
    }
}
