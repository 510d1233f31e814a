// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import garboard.checks.Situation;
import garboard.model.FuelKind;
import garboard.model.FuelLineKind;
import garboard.physics.pipe.Fluid;
import garboard.physics.pipe.Medium;
import garboard.quantity.Density;
import garboard.quantity.Length;
import garboard.quantity.Temperature;

/** What checks of the fuel supply read alike: which fuel, its density, which lines are tube and which are hose of the best class. */
final class FuelFigures {

    /** Densities are told at this temperature. */
    private static final Temperature USUAL = Temperature.of(15, "degC");
    /** Cold fuel is thick: what suction and line drop are reckoned with. */
    private static final Temperature COLD = Temperature.of(0, "degC");

    private FuelFigures() {
    }

    static boolean isGasoline(Situation<?> s) {
        return s.set().getFuel() == FuelKind.GASOLINE;
    }

    /** 745 kg/m3 for gasoline, 840 kg/m3 for diesel. */
    static Density density(Situation<?> s) {
        return medium(s).at(USUAL).density();
    }

    /** The set's fuel at freezing point. */
    static Fluid cold(Situation<?> s) {
        return medium(s).at(COLD);
    }

    private static Medium medium(Situation<?> s) {
        return isGasoline(s) ? Medium.GASOLINE : Medium.DIESEL;
    }

    static boolean isTube(FuelLineKind kind) {
        return switch (kind) {
            case COPPER_TUBE, COPPER_NICKEL_TUBE, STEEL_TUBE -> true;
            default -> false;
        };
    }

    /** Passes the fire test and lets little fuel through its wall; the later kind with 15 g/m2 a day does so all the more. */
    static boolean isA1(FuelLineKind kind) {
        return kind == FuelLineKind.HOSE_A1 || kind == FuelLineKind.HOSE_A1_15;
    }

    /** More than, where binary rounding of two units must not make 12 ft and 3.6576 m differ. */
    static boolean exceeds(Length length, Length limit) {
        return length.si() > limit.si() * (1 + 1e-9);
    }
}
