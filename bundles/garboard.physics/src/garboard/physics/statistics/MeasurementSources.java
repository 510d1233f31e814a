// SPDX-License-Identifier: EPL-2.0
package garboard.physics.statistics;

import garboard.physics.Source;
import garboard.physics.Status;

/** Where the rules of this package come from. */
public final class MeasurementSources {

    public static final Source UNCERTAINTY = new Source("GUM: u = sqrt((half width / sqrt(3))^2 + s^2 / n), U = 2 u", Status.FROM_MEMORY, "");
    public static final Source GUARD_BAND = new Source("ILAC-G8:09/2019, non-binary statement with guard band w = U", Status.RETRIEVED,
            "that a safety limit is passed by a plain pass only is common practice");
    public static final Source DROOP_REGRESSION = new Source("least squares; droop = -slope P rated / f rated", Status.DERIVED,
            "R2 of 0.95 and two standard errors are common practice; UFGS repeats the droop test three times (retrieved)");
    public static final Source ELECTRICAL_STEADINESS = new Source(
            "UFGS 16237N, 16263A, 16264A: four consecutive readings without continuing trend", Status.RETRIEVED,
            "at most 15 min apart; 10 min in one US Army manual");
    public static final Source THERMAL_STEADINESS = new Source("least-squares slope times window at most the limit", Status.COMMON_PRACTICE,
            "coolant and exhaust 2 K, compartment 1 K in 10 min");

    private MeasurementSources() {
    }
}
