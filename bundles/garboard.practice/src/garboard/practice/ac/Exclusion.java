// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;

import garboard.model.ElectricalLoad;

/** Loads that never run together, by the names that stand beside them. */
final class Exclusion {

    private Exclusion() {
    }

    /** The names that a load gives, parted by commas or semicolons. */
    static List<String> named(ElectricalLoad load) {
        return load.getExclusiveWith() == null ? List.of()
            : Stream.of(load.getExclusiveWith().split("[;,]")).map(String::strip).filter(name -> !name.isEmpty()).toList();
    }

    /** Whether a name means a load. */
    static boolean means(String name, ElectricalLoad load) {
        return name.equalsIgnoreCase(load.getName()) || name.equalsIgnoreCase(load.getId());
    }

    /** Of these loads those that can run together and ask for the most active power. */
    static List<ElectricalLoad> heaviest(List<ElectricalLoad> loads) {
        var chosen = new HashSet<ElectricalLoad>();
        var left = new ArrayList<>(loads);
        while (!left.isEmpty()) {
            List<ElectricalLoad> group = group(left.getFirst(), left);
            left.removeAll(group);
            chosen.addAll(heaviestOf(group));
        }
        return loads.stream().filter(chosen::contains).toList();
    }

    /** A load and all that it is bound to, be it through others. */
    private static List<ElectricalLoad> group(ElectricalLoad first, List<ElectricalLoad> loads) {
        var group = new ArrayList<>(List.of(first));
        for (int i = 0; i < group.size(); i++) {
            ElectricalLoad member = group.get(i);
            loads.stream().filter(load -> exclude(member, load) && !group.contains(load)).forEach(group::add);
        }
        return group;
    }

    /** The first load either runs, and rules out all that it excludes, or it does not run. */
    private static List<ElectricalLoad> heaviestOf(List<ElectricalLoad> bound) {
        if (bound.isEmpty()) {
            return List.of();
        }
        ElectricalLoad first = bound.getFirst();
        List<ElectricalLoad> others = bound.subList(1, bound.size());
        var with = new ArrayList<ElectricalLoad>(List.of(first));
        with.addAll(heaviestOf(others.stream().filter(other -> !exclude(first, other)).toList()));
        if (others.stream().noneMatch(other -> exclude(first, other))) {
            return with;
        }
        List<ElectricalLoad> without = heaviestOf(others);
        return demandW(without) > demandW(with) ? without : with;
    }

    private static boolean exclude(ElectricalLoad one, ElectricalLoad other) {
        return one != other && (named(one).stream().anyMatch(name -> means(name, other)) || named(other).stream().anyMatch(name -> means(name, one)));
    }

    private static double demandW(List<ElectricalLoad> loads) {
        return loads.stream().mapToDouble(load -> LoadList.demand(load).si()).sum();
    }
}
