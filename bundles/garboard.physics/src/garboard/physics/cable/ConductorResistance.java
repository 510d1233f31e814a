// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import java.util.Optional;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.ResistancePerLength;
import garboard.quantity.Temperature;

/** Resistance of a copper conductor per length of one conductor. */
public final class ConductorResistance {

    private static final ReferenceTable IEC = ReferenceTable.load("conductor-resistance-iec60228.csv");
    /** Annealed copper at 20 degC, 17.241 ohm mm2/km. */
    private static final double RESISTIVITY_OHM_M = 17.241e-9;
    private static final double COEFFICIENT_PER_K = 0.00393;
    private static final double REFERENCE_K = 293.15;

    private ConductorResistance() {
    }

    /** Maximum of IEC 60228 at 20 degC ({@link CableSources#IEC_60228}); throws for a size that the standard does not list. */
    public static ResistancePerLength iec60228(ConductorSize size, StrandClass make) {
        return listed(size, make).orElseThrow(() -> OutOfRangeException.of("conductor size", size, "a size of IEC 60228, 0.5 to 630 mm2"));
    }

    /** Annealed copper of the full area at 20 degC, rho / A ({@link CableSources#ANNEALED_COPPER}): the solid equivalent of any size. */
    public static ResistancePerLength annealedCopper(ConductorSize size) {
        return ResistancePerLength.of(RESISTIVITY_OHM_M / size.area().si());
    }

    /** The standard's maximum where IEC 60228 lists the size, else annealed copper of the same area, both at 20 degC. */
    public static ResistancePerLength at20(ConductorSize size, StrandClass make) {
        return listed(size, make).orElseGet(() -> annealedCopper(size));
    }

    /** R20 (1 + 0.00393 (T - 20 degC)) ({@link CableSources#ANNEALED_COPPER}). Valid from -50 to 200 degC; throws outside. */
    public static ResistancePerLength atTemperature(ResistancePerLength at20, Temperature conductor) {
        double temperatureK = Argument.between("conductor temperature", conductor, 223.15, 473.15, "-50 to 200 degC");
        return ResistancePerLength.of(Argument.positive("resistance at 20 degC", at20) * (1 + COEFFICIENT_PER_K * (temperatureK - REFERENCE_K)));
    }

    private static Optional<ResistancePerLength> listed(ConductorSize size, StrandClass make) {
        if (size.series() != ConductorSize.Series.SQUARE_MILLIMETRE) {
            return Optional.empty();
        }
        return IEC.rowOf("mm2", size.toString().replace(" mm2", ""))
                .map(row -> ResistancePerLength.of(IEC.figure(row, make.column).orElseThrow() / 1000));
    }
}
