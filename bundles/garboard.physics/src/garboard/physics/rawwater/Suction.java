// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rawwater;

import garboard.physics.pipe.Hydrostatics;
import garboard.physics.pipe.PipeLoss;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;

/**
 * Suction at a pump: what the flow loses on the way, and the height it is lifted. Conservation of energy, the velocity head counted through the
 * loss coefficients.
 *
 * @param loss of the suction line
 * @param lift height of the pump above the free surface; negative where the pump stands below it
 */
public record Suction(PipeLoss loss, Length lift) {

    /** Greatest suction head without the pump maker's word, 4 ft. Gerr, Boat Mechanical Systems Handbook, ch. 19. */
    public static final Length GREATEST_HEAD_BY_GERR = Length.of(4, "ft");

    /** Loss and lift as a column of the fluid; negative where the pump is fed under pressure. */
    public Length head() {
        return Length.of(loss.head().si() + lift.si());
    }

    /** Vacuum at the pump; negative where it is fed under pressure. */
    public PressureDifference vacuum() {
        return Hydrostatics.pressure(loss.fluid().density(), head());
    }

    /** Highest the pump may stand above the free surface for a greatest head; negative: it has to stand below. */
    public Length greatestLift(Length greatestHead) {
        return Length.of(greatestHead.si() - loss.head().si());
    }

    /** What the line may lose for a greatest vacuum at this lift; negative where the lift alone is too much. */
    public PressureDifference greatestLoss(PressureDifference greatestVacuum) {
        return PressureDifference.of(greatestVacuum.si() - Hydrostatics.pressure(loss.fluid().density(), lift).si());
    }
}
