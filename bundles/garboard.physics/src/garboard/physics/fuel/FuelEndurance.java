// SPDX-License-Identifier: EPL-2.0
package garboard.physics.fuel;

import garboard.physics.Argument;
import garboard.quantity.Density;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/** How much an engine burns and how long a tank lasts. */
public final class FuelEndurance {

    /** Part of a tank that can be drawn. Common practice. */
    public static final Ratio USUAL_USABLE = Ratio.of(0.90);

    /** What to have over the planned running time. Common practice. */
    public static final Ratio USUAL_RESERVE = Ratio.of(0.20);

    private static final double GALLONS_PER_HORSEPOWER_HOUR = 0.054;

    private FuelEndurance() {
    }

    /** Volume burnt: P BSFC / rho. */
    public static VolumeFlow burn(Combustion engine, Density fuel) {
        return VolumeFlow.of(engine.fuelFlow().si() / Argument.positive("fuel density", fuel));
    }

    /** Diesel burnt by rule of thumb, 0.054 US gal for a horsepower hour (0.274 L/kWh): Gerr, Boat Mechanical Systems Handbook. */
    public static VolumeFlow dieselBurnByGerr(Power shaft) {
        return VolumeFlow.of(GALLONS_PER_HORSEPOWER_HOUR * Power.of(Argument.positive("shaft power", shaft)).in("hp"), "gal/h");
    }

    /** Time that a tank lasts. @param usable part of the tank that can be drawn, 0 to 1 */
    public static TimeSpan lasts(Volume tank, Ratio usable, VolumeFlow burn) {
        return TimeSpan.of(Argument.positive("tank volume", tank) * Argument.between("usable part", usable, 0, 1, "0 to 1")
            / Argument.positive("burn", burn));
    }

    /** Least tank for a running time and a reserve over it. */
    public static Volume leastTank(TimeSpan planned, VolumeFlow burn, Shares shares) {
        return Volume.of(Argument.notNegative("planned time", planned) * (1 + shares.reserve().si()) * Argument.positive("burn", burn)
            / shares.usable().si());
    }

    /** Usable part of a tank, more than 0 to 1, and reserve over the planned time, 0 or more. */
    public record Shares(Ratio usable, Ratio reserve) {
        public Shares {
            Argument.positive("usable part", usable);
            Argument.between("usable part", usable, 0, 1, "more than 0, to 1");
            Argument.notNegative("reserve", reserve);
        }

        /** The customary ones. */
        public static Shares usual() {
            return new Shares(USUAL_USABLE, USUAL_RESERVE);
        }

        public Shares withUsable(Ratio part) {
            return new Shares(part, reserve);
        }

        public Shares withReserve(Ratio part) {
            return new Shares(usable, part);
        }
    }
}
