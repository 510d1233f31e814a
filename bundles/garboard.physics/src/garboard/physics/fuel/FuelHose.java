// SPDX-License-Identifier: EPL-2.0
package garboard.physics.fuel;

import garboard.physics.Argument;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;

/** Working pressure of fuel hose to ISO 7840:2021 and ISO 8469:2021 (scope): 0.34 MPa to 10 mm bore, 0.25 MPa to 63 mm. */
public final class FuelHose {

    private static final double SMALL_TO_M = 0.010;
    private static final double LARGE_TO_M = 0.063;

    private FuelHose() {
    }

    /** @param bore more than 0, to 63 mm: the standards go no further */
    public static GaugePressure workingPressure(Length bore) {
        Argument.positive("bore", bore);
        double boreM = Argument.between("bore", bore, 0, LARGE_TO_M, "more than 0, to 63 mm");
        return GaugePressure.of(boreM <= SMALL_TO_M ? 340_000 : 250_000);
    }
}
