// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import garboard.model.Ventilation;
import garboard.practice.Figures;
import garboard.quantity.Accuracy;
import garboard.quantity.Temperature;
import garboard.quantity.TemperatureDifference;

/** Temperatures in the compartment against those outside, and carried over to the hottest day that the set is meant for. */
final class OutsideAir {

    private OutsideAir() {
    }

    /** Whether a reading can be carried over. */
    static boolean carriesOver(Ventilation ventilation) {
        return ventilation.getOutsideTemperature() != null && ventilation.getDesignAmbient() != null;
    }

    /** Rise over the outside; it stays about the same on a hotter day. */
    static TemperatureDifference rise(Temperature inside, Ventilation ventilation) {
        TemperatureDifference rise = TemperatureDifference.of(inside.si() - ventilation.getOutsideTemperature().si());
        double halfWidthK = halfWidthK(inside, ventilation);
        return halfWidthK == 0 ? rise : rise.withAccuracy(TemperatureDifference.of(halfWidthK));
    }

    /** The reading as it would be at the design ambient, or as it is where that is not known. */
    static Temperature onHottestDay(Temperature inside, Ventilation ventilation) {
        if (!carriesOver(ventilation)) {
            return inside;
        }
        Temperature hottest = Temperature.of(ventilation.getDesignAmbient().si() + inside.si() - ventilation.getOutsideTemperature().si());
        double halfWidthK = halfWidthK(inside, ventilation);
        return halfWidthK == 0 ? hottest : hottest.withAccuracy(new Accuracy(Double.toString(halfWidthK), "K"));
    }

    static String inWords(String what, Temperature inside, Ventilation ventilation) {
        return what + " is " + Figures.both(inside) + (carriesOver(ventilation) ? ", which is "
            + Figures.both(onHottestDay(inside, ventilation)) + " at an ambient of " + Figures.both(ventilation.getDesignAmbient()) : "");
    }

    /** Both readings may be off the same way. */
    private static double halfWidthK(Temperature inside, Ventilation ventilation) {
        return inside.accuracySi().orElse(0) + ventilation.getOutsideTemperature().accuracySi().orElse(0);
    }
}
