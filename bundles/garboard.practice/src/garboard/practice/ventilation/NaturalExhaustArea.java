// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import garboard.checks.Check;
import garboard.model.DuctFunction;
import garboard.model.Ventilation;

/** 33 CFR 183.630: natural exhaust has the area that the volume of the compartment asks for. */
final class NaturalExhaustArea {

    private NaturalExhaustArea() {
    }

    static Check<Ventilation> check() {
        return NaturalArea.check("VENT-NATURAL-EXHAUST-183-630", DuctFunction.NATURAL_EXHAUST, "exhaust");
    }
}
