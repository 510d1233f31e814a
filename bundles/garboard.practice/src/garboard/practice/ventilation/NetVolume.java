// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import garboard.model.Ventilation;
import garboard.practice.Figures;
import garboard.quantity.Ratio;

/** The net volume in words, with a reminder where compartments open into each other. */
final class NetVolume {

    /** 33 CFR 183.630: above this part of the area between two compartments they count as one. */
    private static final Ratio JOINED_ABOVE = Ratio.of(2, "%");

    private NetVolume() {
    }

    static String inWords(Ventilation ventilation) {
        String volume = "a net volume of " + Figures.in(ventilation.getNetVolume(), "m3", "ft3");
        Ratio opening = ventilation.getConnectedOpeningFraction();
        boolean joined = opening != null && opening.si() > JOINED_ABOVE.si() * (1 + 1e-9);
        return joined ? volume + ", which has to include the compartment that it opens into" : volume;
    }
}
