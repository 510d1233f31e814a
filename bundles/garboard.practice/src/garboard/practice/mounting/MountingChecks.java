// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import java.util.List;

import garboard.checks.Check;

/** The checks of the mounting by the authority behind them, each list from the beds up. */
public final class MountingChecks {

    private MountingChecks() {
    }

    /** 46 CFR subchapter T. */
    public static List<Check<?>> smallPassenger() {
        return List.of(AccessOnPassengerVessel.check(), AboveBilgeOnPassengerVessel.check());
    }

    /** Voluntary standards, as far as they were seen quoted. */
    public static List<Check<?>> standards() {
        return List.of(Bonded.check(), BondingSize.check());
    }

    /** Common practice, laws that do not bind, and geometry. */
    public static List<Check<?>> handbook() {
        return List.of(BedsRigid.check(), MountsAligned.check(), InstalledTrim.check(), InstalledHeel.check(), ClearanceAround.check(),
            FlexibleConnections.check(), DripTray.check(), AccessInAnyBoat.check(), AboveBilgeInAnyBoat.check(), GuardsFitted.check(),
            AnodesFitted.check(), ReturnInsulated.check());
    }
}
