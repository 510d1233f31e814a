// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static garboard.quantity.TradeUnits.ATMOSPHERE;
import static garboard.quantity.TradeUnits.BAR;
import static garboard.quantity.TradeUnits.CUBIC_METRE;
import static garboard.quantity.TradeUnits.FOOT;
import static garboard.quantity.TradeUnits.GALLON;
import static garboard.quantity.TradeUnits.GRAM;
import static garboard.quantity.TradeUnits.HOUR;
import static garboard.quantity.TradeUnits.INCH_OF_MERCURY;
import static garboard.quantity.TradeUnits.INCH_OF_WATER;
import static garboard.quantity.TradeUnits.KILOGRAM;
import static garboard.quantity.TradeUnits.KILOGRAM_FORCE;
import static garboard.quantity.TradeUnits.CENTIMETRE;
import static garboard.quantity.TradeUnits.LITRE;
import static garboard.quantity.TradeUnits.MINUTE;
import static garboard.quantity.TradeUnits.MM_OF_MERCURY;
import static garboard.quantity.TradeUnits.MM_OF_WATER;
import static garboard.quantity.TradeUnits.PASCAL;
import static garboard.quantity.TradeUnits.POUND;
import static garboard.quantity.TradeUnits.POUND_FORCE;
import static garboard.quantity.TradeUnits.PSI;
import static garboard.quantity.TradeUnits.SECOND;
import static garboard.quantity.TradeUnits.times;

/** Units of pressure and of flow. */
final class FlowUnits {

    static final UnitTable ABSOLUTE_PRESSURE = pressure("absolute pressure", "psia").shownIn("kPa", "inHg");

    static final UnitTable GAUGE_PRESSURE = pressure("gauge pressure", "psig").shownIn("kPa", "psi");

    static final UnitTable PRESSURE_DIFFERENCE = pressure("pressure difference", "psid").shownIn("kPa", "psi");

    static final UnitTable VOLUME_FLOW = UnitTable.of("volume flow", "m3/s", CUBIC_METRE.divide(SECOND))
        .unit("L/min", LITRE.divide(MINUTE), "l/min", "lpm")
        .unit("L/h", LITRE.divide(HOUR), "l/h", "lph")
        .unit("m3/h", CUBIC_METRE.divide(HOUR))
        .unit("gal/min", GALLON.divide(MINUTE), "gpm", "US gpm", "US gal/min")
        .unit("gal/h", GALLON.divide(HOUR), "gph", "US gph", "US gal/h")
        .unit("ft3/min", FOOT.pow(3).divide(MINUTE), "cfm")
        .unit("m3/min", CUBIC_METRE.divide(MINUTE))
        .unit("L/s", LITRE.divide(SECOND), "l/s")
        .unit("m3/s", CUBIC_METRE.divide(SECOND))
        .shownIn("L/min", "gal/min");

    static final UnitTable MASS_FLOW = UnitTable.of("mass flow", "kg/s", KILOGRAM.divide(SECOND))
        .unit("kg/h", KILOGRAM.divide(HOUR))
        .unit("kg/min", KILOGRAM.divide(MINUTE))
        .unit("kg/s", KILOGRAM.divide(SECOND))
        .unit("lb/h", POUND.divide(HOUR))
        .unit("lb/min", POUND.divide(MINUTE))
        .unit("g/s", GRAM.divide(SECOND))
        .unit("g/h", GRAM.divide(HOUR))
        .shownIn("kg/h", "lb/h");

    private FlowUnits() {
    }

    /** Gauge, absolute and difference are told apart by the kind; the unit is the same, but for the letter people put to psi. */
    private static UnitTable.Declaration pressure(String kindName, String psiWithLetter) {
        return UnitTable.of(kindName, "Pa", PASCAL)
            .unit("kPa", times(PASCAL, "1000"))
            .unit("bar", BAR)
            .unit("mbar", times(BAR, "0.001"))
            .unit("psi", PSI, psiWithLetter, "lbf/in2")
            .unit("inHg", INCH_OF_MERCURY)
            .unit("inH2O", INCH_OF_WATER, "inwc", "in WG")
            .unit("mmHg", MM_OF_MERCURY)
            .unit("mmH2O", MM_OF_WATER)
            .unit("cmH2O", times(MM_OF_WATER, "10"))
            .unit("mH2O", times(MM_OF_WATER, "1000"))
            .unit("ftH2O", times(INCH_OF_WATER, "12"))
            .unit("Pa", PASCAL)
            .unit("hPa", times(PASCAL, "100"))
            .unit("MPa", times(PASCAL, "1000000"))
            .unit("lbf/ft2", POUND_FORCE.divide(FOOT.pow(2)), "psf")
            .unit("kgf/cm2", KILOGRAM_FORCE.divide(CENTIMETRE.pow(2)))
            .unit("atm", ATMOSPHERE);
    }
}
