// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static garboard.quantity.TradeUnits.AMPERE;
import static garboard.quantity.TradeUnits.COULOMB;
import static garboard.quantity.TradeUnits.FOOT;
import static garboard.quantity.TradeUnits.HOUR;
import static garboard.quantity.TradeUnits.METRE;
import static garboard.quantity.TradeUnits.OHM;
import static garboard.quantity.TradeUnits.VOLT;
import static garboard.quantity.TradeUnits.times;

import javax.measure.Unit;

/** Units of electricity. */
final class ElectricalUnits {

    private static final Unit<?> VOLT_AMPERE = VOLT.multiply(AMPERE);

    static final UnitTable VOLTAGE = UnitTable.of("voltage", "V", VOLT)
        .unit("V", VOLT, "volt", "volts")
        .unit("mV", times(VOLT, "0.001"))
        .unit("kV", times(VOLT, "1000"))
        .unit("MV", times(VOLT, "1000000"))
        .shownIn("V", "V");

    static final UnitTable CURRENT = UnitTable.of("current", "A", AMPERE)
        .unit("A", AMPERE, "amp", "amps")
        .unit("mA", times(AMPERE, "0.001"))
        .unit("uA", times(AMPERE, "0.000001"))
        .unit("kA", times(AMPERE, "1000"))
        .shownIn("A", "A");

    static final UnitTable RESISTANCE = UnitTable.of("resistance", "ohm", OHM)
        .unit("ohm", OHM, "ohms")
        .unit("mohm", times(OHM, "0.001"))
        .unit("uohm", times(OHM, "0.000001"))
        .unit("kohm", times(OHM, "1000"))
        .unit("Mohm", times(OHM, "1000000"))
        .shownIn("ohm", "ohm");

    static final UnitTable RESISTANCE_PER_LENGTH = UnitTable.of("resistance per length", "ohm/m", OHM.divide(METRE))
        .unit("ohm/km", OHM.divide(times(METRE, "1000")))
        .unit("mohm/m", times(OHM, "0.001").divide(METRE))
        .unit("ohm/m", OHM.divide(METRE))
        .unit("ohm/1000ft", OHM.divide(times(FOOT, "1000")), "ohm/kft")
        .unit("mohm/ft", times(OHM, "0.001").divide(FOOT))
        .unit("ohm/ft", OHM.divide(FOOT))
        .shownIn("ohm/km", "ohm/1000ft");

    static final UnitTable CHARGE = UnitTable.of("charge", "C", COULOMB)
        .unit("Ah", AMPERE.multiply(HOUR))
        .unit("mAh", times(AMPERE.multiply(HOUR), "0.001"))
        .unit("C", COULOMB)
        .shownIn("Ah", "Ah");

    static final UnitTable APPARENT_POWER = UnitTable.of("apparent power", "VA", VOLT_AMPERE)
        .unit("kVA", times(VOLT_AMPERE, "1000"))
        .unit("VA", VOLT_AMPERE)
        .unit("MVA", times(VOLT_AMPERE, "1000000"))
        .shownIn("kVA", "kVA");

    static final UnitTable REACTIVE_POWER = UnitTable.of("reactive power", "var", VOLT_AMPERE)
        .unit("kvar", times(VOLT_AMPERE, "1000"))
        .unit("var", VOLT_AMPERE)
        .unit("Mvar", times(VOLT_AMPERE, "1000000"))
        .shownIn("kvar", "kvar");

    private ElectricalUnits() {
    }
}
