// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.List;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
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
    public static Current panel(PanelLoad load) {
        double othersA = load.intermittent().stream().mapToDouble(Current::si).sum();
        double largestA = load.intermittent().stream().mapToDouble(Current::si).max().orElse(0);
        return Current.of(load.longRunning().stream().mapToDouble(Current::si).sum() + Math.max(largestA, 0.1 * othersA));
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
     * Loads of a direct-current panel.
     *
     * @param longRunning loads that run for hours
     * @param intermittent all others
     */
    public record PanelLoad(List<Current> longRunning, List<Current> intermittent) {

        public PanelLoad {
            longRunning = List.copyOf(longRunning);
            intermittent = List.copyOf(intermittent);
            if (longRunning.isEmpty() && intermittent.isEmpty()) {
                throw OutOfRangeException.of("loads", 0, "1 or more");
            }
            longRunning.forEach(load -> Argument.notNegative("long-running load", load));
            intermittent.forEach(load -> Argument.notNegative("intermittent load", load));
        }
    }
}
