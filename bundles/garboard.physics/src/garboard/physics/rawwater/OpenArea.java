// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rawwater;

import garboard.physics.Argument;
import garboard.physics.pipe.Bore;
import garboard.quantity.Area;
import garboard.quantity.Length;
import garboard.quantity.Ratio;

/** Open areas of gratings and strainer baskets, against the bore behind them. */
public final class OpenArea {

    /** Grating to valve bore: summary of a classification rule, quoted. */
    public static final Ratio GRATING_TO_VALVE = Ratio.of(2);

    /** Basket to hose. Common practice. */
    public static final Ratio BASKET_TO_HOSE = Ratio.of(3);

    private OpenArea() {
    }

    /** Least open area of a hull grating before a valve of this bore. */
    public static Area leastGrating(Length valveBore) {
        return Area.of(GRATING_TO_VALVE.si() * Bore.area(valveBore).si());
    }

    /** Least open area of a strainer basket in a hose of this bore. */
    public static Area leastBasket(Length hoseBore) {
        return Area.of(BASKET_TO_HOSE.si() * Bore.area(hoseBore).si());
    }

    /** Largest bore that an open area serves at a ratio of areas. */
    public static Length greatestBore(Area open, Ratio ratio) {
        return Bore.ofArea(Area.of(Argument.positive("open area", open) / Argument.positive("ratio", ratio)));
    }
}
