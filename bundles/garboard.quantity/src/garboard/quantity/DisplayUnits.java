// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static garboard.quantity.UnitSystem.SI;
import static garboard.quantity.UnitSystem.US;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which unit a size is customarily told in, and how many digits of it are worth printing. */
final class DisplayUnits {

    private static final int USUAL_DIGITS = 3;
    /** 12.74 V, 59.98 Hz, 1794 r/min: kinds read on digital instruments, where the fourth digit decides. */
    private static final int FINE_DIGITS = 4;
    private static final Set<Kind<?>> FINE = Set.of(Voltage.KIND, Frequency.KIND, RotationalSpeed.KIND, Density.KIND,
        AbsolutePressure.KIND);

    private static final Map<UnitSystem, Map<Kind<?>, List<Step>>> STEPS = Map.of(SI, siSteps(), US, usSteps());

    /** Sizes below a number in a unit are told in the unit named. */
    private record Step(double below, String in, String unit) {
    }

    private DisplayUnits() {
    }

    static int digits(Kind<?> kind) {
        return FINE.contains(kind) ? FINE_DIGITS : USUAL_DIGITS;
    }

    static String unitFor(Kind<?> kind, UnitSystem system, double si) {
        if (si == 0) {
            return kind.displayUnit(system);
        }
        for (Step step : STEPS.get(system).getOrDefault(kind, List.of())) {
            if (Math.abs(si) < kind.unit(step.in).conversion().toSi(step.below)) {
                return step.unit;
            }
        }
        return kind.displayUnit(system);
    }

    private static Map<Kind<?>, List<Step>> siSteps() {
        return both(Map.ofEntries(
            steps(Length.KIND, new Step(1, "m", "mm"), everythingElse("m")),
            steps(Area.KIND, new Step(1000, "mm2", "mm2"), new Step(1000, "cm2", "cm2"), everythingElse("m2")),
            steps(Volume.KIND, new Step(1, "L", "mL"), new Step(1000, "L", "L"), everythingElse("m3")),
            steps(Mass.KIND, new Step(1, "kg", "g")),
            steps(AbsolutePressure.KIND, new Step(1, "kPa", "Pa")),
            steps(GaugePressure.KIND, new Step(1, "kPa", "Pa")),
            steps(PressureDifference.KIND, new Step(1, "kPa", "Pa")),
            steps(VolumeFlow.KIND, new Step(1, "L/min", "L/h"), new Step(1000, "L/min", "L/min"), everythingElse("m3/min")),
            steps(MassFlow.KIND, new Step(1, "kg/h", "g/h"))));
    }

    private static Map<Kind<?>, List<Step>> usSteps() {
        return both(Map.ofEntries(
            steps(Length.KIND, new Step(6, "ft", "in"), everythingElse("ft")),
            steps(Area.KIND, new Step(1, "ft2", "in2"), everythingElse("ft2")),
            steps(Volume.KIND, new Step(0.25, "gal", "fl oz")),
            steps(Mass.KIND, new Step(1, "lb", "oz")),
            steps(GaugePressure.KIND, new Step(1, "inHg", "inH2O"), new Step(6, "inHg", "inHg")),
            steps(PressureDifference.KIND, new Step(1, "inHg", "inH2O"), new Step(6, "inHg", "inHg")),
            steps(VolumeFlow.KIND, new Step(0.25, "gal/min", "gal/h"), new Step(150, "gal/min", "gal/min"),
                everythingElse("ft3/min"))));
    }

    /** Adds the kinds that are told alike in both systems. */
    private static Map<Kind<?>, List<Step>> both(Map<Kind<?>, List<Step>> ofOneSystem) {
        Map<Kind<?>, List<Step>> all = new HashMap<>(ofOneSystem);
        all.putAll(Map.ofEntries(
            steps(TimeSpan.KIND, new Step(2, "min", "s"), new Step(2, "h", "min"), new Step(3, "d", "h"), everythingElse("d")),
            steps(Energy.KIND, new Step(1, "kWh", "Wh")),
            steps(Power.KIND, new Step(1, "kW", "W")),
            steps(ApparentPower.KIND, new Step(1, "kVA", "VA")),
            steps(ReactivePower.KIND, new Step(1, "kvar", "var")),
            steps(Voltage.KIND, new Step(1, "V", "mV")),
            steps(Current.KIND, new Step(1, "A", "mA")),
            steps(Resistance.KIND, new Step(1, "mohm", "uohm"), new Step(1, "ohm", "mohm"), new Step(1, "kohm", "ohm"),
                new Step(1, "Mohm", "kohm"), everythingElse("Mohm")),
            steps(Ratio.KIND, new Step(500, "ppm", "ppm"))));
        return Map.copyOf(all);
    }

    private static Map.Entry<Kind<?>, List<Step>> steps(Kind<?> kind, Step... steps) {
        return Map.entry(kind, List.of(steps));
    }

    private static Step everythingElse(String unit) {
        return new Step(Double.POSITIVE_INFINITY, unit, unit);
    }
}
