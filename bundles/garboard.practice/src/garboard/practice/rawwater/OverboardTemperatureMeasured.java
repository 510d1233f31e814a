// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__MEASURED_INLET_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__MEASURED_OVERBOARD_TEMPERATURE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.RawWaterCircuit;
import garboard.practice.Figures;
import garboard.quantity.Accuracy;
import garboard.quantity.Temperature;

/** The water goes overboard cool enough, also in the warmest sea that the set is meant for: the rise stays, the sea changes. */
final class OverboardTemperatureMeasured {

    /** Look for the cause above this; alarms are set near 74 degC. Common practice. */
    static final Temperature INVESTIGATE_ABOVE = Temperature.of(60, "degC");

    private OverboardTemperatureMeasured() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("RAWWATER-OVERBOARD-MEASURED", RawWaterCircuit.class)
            .title("Water overboard stays cool, in the warmest sea too")
            .why("Hot water overboard means too little of it: the exhaust hose ages fast and salt chokes the mixing elbow.")
            .basis(Basis.commonPractice().othersSay("40 to 55 degC are usual; the trade press sets alarms near 74 degC (165 degF)"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 60 degC (140 degF), carried over to the design sea temperature")
            .needs(RAW_WATER_CIRCUIT__MEASURED_OVERBOARD_TEMPERATURE)
            .uses(RAW_WATER_CIRCUIT__MEASURED_INLET_TEMPERATURE, RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE)
            .holds(s -> {
                RawWaterCircuit circuit = s.subject();
                Temperature warmest = inWarmestSea(circuit);
                String found = "the water leaves with " + Figures.both(circuit.getMeasuredOverboardTemperature());
                if (carriesOver(circuit)) {
                    found += ", which is " + Figures.both(warmest) + " in a sea of " + Figures.both(circuit.getDesignSeaTemperature());
                }
                return Comparison.atMost(found, warmest, Limit.of(INVESTIGATE_ABOVE, "common practice"));
            })
            .remedy("More water: clean strainer and intake, look at impeller, suction hose and heat exchanger")
            .build();
    }

    private static Temperature inWarmestSea(RawWaterCircuit circuit) {
        Temperature measured = circuit.getMeasuredOverboardTemperature();
        if (!carriesOver(circuit)) {
            return measured;
        }
        double riseK = measured.si() - circuit.getMeasuredInletTemperature().si();
        Temperature warmest = Temperature.of(circuit.getDesignSeaTemperature().si() + riseK);
        double halfWidthK = measured.accuracySi().orElse(0) + circuit.getMeasuredInletTemperature().accuracySi().orElse(0);
        return halfWidthK == 0 ? warmest : warmest.withAccuracy(new Accuracy(Double.toString(halfWidthK), "K"));
    }

    private static boolean carriesOver(RawWaterCircuit circuit) {
        return circuit.getMeasuredInletTemperature() != null && circuit.getDesignSeaTemperature() != null;
    }
}
