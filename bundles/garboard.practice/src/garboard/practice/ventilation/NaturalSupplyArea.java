// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import garboard.checks.Check;
import garboard.model.DuctFunction;
import garboard.model.Ventilation;

/** 33 CFR 183.630: natural supply has the area that the volume of the compartment asks for. */
final class NaturalSupplyArea {

    private NaturalSupplyArea() {
    }

    static Check<Ventilation> check() {
        return NaturalArea.check("VENT-NATURAL-SUPPLY-183-630", DuctFunction.NATURAL_SUPPLY, "supply");
    }
}
