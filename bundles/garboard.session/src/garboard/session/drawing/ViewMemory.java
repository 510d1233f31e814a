// SPDX-License-Identifier: EPL-2.0
package garboard.session.drawing;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import garboard.report.drawing.PlacedPart.Circuit;
import garboard.report.drawing.View;
import garboard.session.Stop;

/** Which view a person has at which stop: what suits the stop, until another is chosen there. */
public final class ViewMemory {

    private final Map<Stop, View> chosen = new EnumMap<>(Stop.class);

    /** {@return whether a drawing is of any use at a stop} */
    public static boolean helpsAt(Stop stop) {
        return stop == Stop.VESSEL || about(stop).isPresent();
    }

    /** {@return the circuit that a stop is about} */
    public static Optional<Circuit> about(Stop stop) {
        return switch (stop) {
            case FUEL -> Optional.of(Circuit.FUEL);
            case RAW_WATER -> Optional.of(Circuit.RAW_WATER);
            case EXHAUST -> Optional.of(Circuit.EXHAUST);
            default -> Optional.empty();
        };
    }

    /** {@return the view at a stop} */
    public View at(Stop stop) {
        return chosen.getOrDefault(stop, stop == Stop.EXHAUST ? View.RUNS : View.SIDE);
    }

    public void choose(Stop stop, View view) {
        chosen.put(stop, view);
    }

    /** {@return what to keep for the next start} */
    public String written() {
        return chosen.entrySet().stream().map(entry -> entry.getKey() + "=" + entry.getValue()).collect(Collectors.joining(";"));
    }

    /** Takes up what was kept; what it does not know, it leaves. */
    public void read(String kept) {
        for (String pair : kept.split(";")) {
            String[] sides = pair.split("=", 2);
            if (sides.length == 2) {
                known(Stop.values(), sides[0]).ifPresent(stop -> known(View.values(), sides[1]).ifPresent(view -> choose(stop, view)));
            }
        }
    }

    private static <E extends Enum<E>> Optional<E> known(E[] values, String name) {
        return Arrays.stream(values).filter(value -> value.name().equals(name)).findFirst();
    }
}
