// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.List;

import garboard.physics.Argument;
import garboard.quantity.Current;
import garboard.quantity.Power;

/** Demand loads of feeders by printed rules. */
public final class FeederDemand {

    private static final double GALLEY_FIRST_W = 50_000;

    private FeederDemand() {
    }

    /**
     * Galley feeder: the larger of the first 50 kW and half the connected load, 65 % of the rest, and half the rating of spare circuits
     * ({@link AcSources#GALLEY_FEEDER}).
     */
    public static Power galley(GalleyLoad load) {
        double connectedW = load.connected().si();
        double fullW = Math.max(Math.min(connectedW, GALLEY_FIRST_W), connectedW / 2);
        return Power.of(fullW + 0.65 * (connectedW - fullW) + 0.5 * load.spareCircuits().si());
    }

    /** Sum of the long-running loads and the larger of the largest other and 10 % of the sum of the others ({@link AcSources#PANEL_FEEDER}). */
    public static Current panel(Current longRunning, OtherLoads others) {
        return Current.of(Argument.notNegative("long-running loads", longRunning) + Math.max(others.largest().si(), 0.1 * others.sum().si()));
    }

    /**
     * Load of a galley.
     *
     * @param connected sum of the appliances
     * @param spareCircuits sum of the ratings of spare switches and breakers
     */
    public record GalleyLoad(Power connected, Power spareCircuits) {

        public GalleyLoad {
            Argument.notNegative("connected galley load", connected);
            Argument.notNegative("spare circuits", spareCircuits);
        }

        /** A galley without spare circuits. */
        public static GalleyLoad of(Power connected) {
            return new GalleyLoad(connected, Power.of(0));
        }
    }

    /**
     * Loads of a direct-current panel that do not run for hours.
     *
     * @param largest the largest of them
     * @param sum all of them, the largest included
     */
    public record OtherLoads(Current largest, Current sum) {

        public OtherLoads {
            Argument.between("largest of the other loads", largest, 0, Argument.notNegative("sum of the other loads", sum),
                    "0 up to the sum of the other loads, " + sum);
        }

        /** Of single loads; none at all count as 0 A. */
        public static OtherLoads of(List<Current> loads) {
            return new OtherLoads(Current.of(loads.stream().mapToDouble(Current::si).max().orElse(0)),
                    Current.of(loads.stream().mapToDouble(load -> Argument.notNegative("load", load)).sum()));
        }
    }
}
