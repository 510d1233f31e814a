// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

import garboard.model.ElectricalLoad;
import garboard.model.PhaseSystem;

/** On which phases or legs a load lies, from what a person wrote: L1, A or 1; L1-L2; L1-L2-L3. What says nothing of it lies on all alike. */
final class Phases {

    private static final Pattern PHASE = Pattern.compile("L?([123])|([ABC])|([RST])|([UVW])");

    private final int ofTheSet;
    private final Set<Integer> ofTheLoad;

    private Phases(int ofTheSet, Set<Integer> ofTheLoad) {
        this.ofTheSet = ofTheSet;
        this.ofTheLoad = ofTheLoad;
    }

    static Phases of(ElectricalLoad load, PhaseSystem set) {
        int count = count(set);
        var found = new TreeSet<Integer>();
        if (load.getPhase() != null) {
            for (String word : load.getPhase().toUpperCase(Locale.ROOT).split("[^A-Z0-9]+")) {
                Matcher phase = PHASE.matcher(word);
                if (phase.matches()) {
                    found.add(number(phase));
                }
            }
        }
        found.removeIf(phase -> phase >= count);
        return new Phases(count, found.isEmpty() ? new TreeSet<>(IntStream.range(0, count).boxed().toList()) : found);
    }

    static int count(PhaseSystem set) {
        return switch (set) {
            case THREE_PHASE -> 3;
            case SPLIT_PHASE -> 2;
            case SINGLE_PHASE, NOT_ENTERED -> 1;
        };
    }

    private static int number(Matcher phase) {
        if (phase.group(1) != null) {
            return phase.group(1).charAt(0) - '1';
        }
        String letter = phase.group();
        return "AU".contains(letter) || letter.equals("R") ? 0 : "BSV".contains(letter) ? 1 : 2;
    }

    /** Share of the load on a phase of the set, counted from 0. */
    double shareOn(int phase) {
        return ofTheLoad.contains(phase) ? 1.0 / ofTheLoad.size() : 0;
    }

    /** Part of the set's winding that feeds the load: a third for one phase of three. */
    double partOfTheSet() {
        return (double) ofTheLoad.size() / ofTheSet;
    }

    boolean areThree() {
        return ofTheLoad.size() == 3;
    }
}
