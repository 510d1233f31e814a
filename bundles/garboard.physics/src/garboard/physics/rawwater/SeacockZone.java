// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rawwater;

import garboard.physics.Argument;
import garboard.physics.geometry.AttitudeEnvelope;
import garboard.physics.geometry.BoatPoint;
import garboard.physics.geometry.HeeledHeight;
import garboard.quantity.Length;

/** Which openings in the hull need a valve. Three published measures, kept apart. */
public final class SeacockZone {

    private static final Length GERR_LEAST = Length.of(0.30);
    private static final Length LINE_46_CFR_179_350 = Length.of(0.15);

    private SeacockZone() {
    }

    /**
     * Height above the loaded waterline below which every opening gets a valve: the larger of 0.30 m and a sixtieth of the waterline length.
     * Gerr, Boat Mechanical Systems Handbook, ch. 17.
     */
    public static Length heightByGerr(Length waterlineLength) {
        return Length.of(Math.max(GERR_LEAST.si(), Argument.positive("waterline length", waterlineLength) / 60));
    }

    /** Below the heeled waterline: ISO 9093 and US practice. */
    public static boolean belowHeeledWaterline(BoatPoint opening, AttitudeEnvelope envelope) {
        return HeeledHeight.lowest(opening, envelope).height().si() < 0;
    }

    /**
     * Lower than 150 mm above the deepest load waterline: 46 CFR 179.350, small passenger vessels; exhausts are exempt there. A height of 150 mm
     * counts as not below.
     */
    public static boolean below46Cfr179Line(Length heightAboveWaterline) {
        return heightAboveWaterline.isLessThan(LINE_46_CFR_179_350);
    }
}
