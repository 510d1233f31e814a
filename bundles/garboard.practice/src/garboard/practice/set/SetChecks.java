// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import java.util.List;

import garboard.checks.Check;

/** The checks of the set itself by the authority behind them, the plate first. */
public final class SetChecks {

    private SetChecks() {
    }

    /** Federal rules for gasoline sets. */
    public static List<Check<?>> federal() {
        return List.of(EmissionLabel.check());
    }

    /** Voluntary standards, as far as they were seen quoted. */
    public static List<Check<?>> standards() {
        return List.of(RatingForItsUse.check(), HoursWithinRating.check(), OverloadOfPrimeRating.check());
    }

    /** Physics, and the record's own plan. */
    public static List<Check<?>> handbook() {
        return List.of(PlatePower.check(), PlateSpeed.check(), ShaftPowerEnough.check(), StarterVoltage.check(), FuelFiguresAgree.check(),
            ConsumptionTypical.check(), ServiceInTime.check());
    }
}
