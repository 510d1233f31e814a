// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import garboard.physics.Argument;
import garboard.quantity.Voltage;

/** Permitted voltage drop of ordinary direct-current circuits ({@link CableSources#DROP_ALLOWANCE}); cranking circuits have their own. */
public enum DropAllowance {
    /** 3 %: main feeders, bilge blowers, navigation lights, electronics; here also the set's controls, fuel pump and shutdown. */
    CRITICAL(0.03),
    /** 10 %: what may run dim or slow. */
    NON_CRITICAL(0.10);

    private final double share;

    DropAllowance(double share) {
        this.share = share;
    }

    /** Permitted drop, out and back, counted from the nominal voltage. */
    public Voltage of(Voltage nominal) {
        return Voltage.of(share * Argument.positive("nominal voltage", nominal));
    }
}
