// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rating;

import garboard.physics.Argument;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;

/**
 * Three simple rules for height and heat, each answering the share of the rating that is left. They begin at different heights and temperatures;
 * choose one, name it, never add two. Heights 0 to 4000 m, temperatures -45 to 60 degC; each throws outside.
 */
public final class SimpleDerating {

    private static final double FOOT_M = 0.3048;

    private SimpleDerating() {
    }

    /** Engines that the textbook tells apart. */
    public enum TextbookEngine {
        SPARK_IGNITION(0.03, 0.01 / 10), DIESEL_NATURALLY_ASPIRATED(0.03, 0.01 / 5), TURBOCHARGED(0, 0);

        private final double lossPer1000Ft;
        private final double lossPerDegF;

        TextbookEngine(double lossPer1000Ft, double lossPerDegF) {
            this.lossPer1000Ft = lossPer1000Ft;
            this.lossPerDegF = lossPerDegF;
        }
    }

    /** Height alone: 3 % for each 1000 ft above 500 ft ({@link RatingSources#AGRICULTURAL}). */
    public static Ratio textbookHeight(TextbookEngine engine, Length height) {
        double heightFt = height(height) / FOOT_M;
        return Ratio.of(1 - engine.lossPer1000Ft * Math.max(0, heightFt - 500) / 1000);
    }

    /** Temperature alone: spark ignition 1 % for each 10 degF, diesel 1 % for each 5 degF above 85 degF ({@link RatingSources#AGRICULTURAL}). */
    public static Ratio textbookTemperature(TextbookEngine engine, Temperature air) {
        double fahrenheit = celsius(air) * 1.8 + 32;
        return Ratio.of(1 - engine.lossPerDegF * Math.max(0, fahrenheit - 85));
    }

    /** 1.3 % for each 100 m above 1219 m and 3 % for each 10 K above 35 degC, added ({@link RatingSources#US_ARMY}). */
    public static Ratio usArmySmallSet(Length height, Temperature air) {
        return Ratio.of(1 - 0.013 * Math.max(0, height(height) - 1219) / 100 - 0.03 * Math.max(0, celsius(air) - 35) / 10);
    }

    /** Alternator: 3 % for each 500 m above 1000 m and 3 % for each 5 K above 40 degC, added ({@link RatingSources#ALTERNATOR}). */
    public static Ratio alternator(Length height, Temperature air) {
        return Ratio.of(1 - 0.03 * Math.max(0, height(height) - 1000) / 500 - 0.03 * Math.max(0, celsius(air) - 40) / 5);
    }

    private static double height(Length height) {
        return Argument.between("height above the sea", height, 0, 4000, "0 to 4000 m");
    }

    private static double celsius(Temperature air) {
        return Argument.between("air temperature", air, 228.15, 333.15, "-45 to 60 degC") - 273.15;
    }
}
