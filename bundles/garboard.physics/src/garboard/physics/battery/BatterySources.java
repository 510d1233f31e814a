// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.Source;
import garboard.physics.Status;

/** Where the figures of this package come from. */
public final class BatterySources {

    public static final Source OPEN_CIRCUIT_TABLE = new Source("US Army TM 5-3805-262-20, state of charge by open-circuit voltage", Status.RETRIEVED,
            "the other curves (SG 1.265, AGM, gel) are typical values from memory");
    public static final Source FLOODED_EMF = new Source("textbook relation E = n (SG + 0.84) V for a flooded lead-acid cell at about 25 degC",
            Status.FROM_MEMORY, "");
    public static final Source HYDROMETER_CORRECTION = new Source("hydrometer correction of 0.004 per 10 degF from 80 degF", Status.QUOTED,
            "the rejection spread of 0.025 is in US Army TM 9-6140-200-14 (retrieved)");
    public static final Source COLD_CRANKING_LINE = new Source(
            "straight line from the open-circuit voltage to 7.2 V at the cold-cranking current (end point of SAE J537)", Status.DERIVED,
            "errs on the low side above -18 degC; 9.6 V at the posts is common practice");
    public static final Source BANK_RULES = new Source("series: volts add; parallel: ampere-hours and cold-cranking amperes add",
            Status.COMMON_PRACTICE, "");
    public static final Source COLD_WEATHER = new Source("widely printed battery output and engine demand against 27 degC (80 degF)",
            Status.COMMON_PRACTICE, "never apply it to a cold-cranking figure, which holds at -18 degC already");
    public static final Source LOAD_TEST = new Source("widely printed least voltage after 15 s at half the cold-cranking current",
            Status.COMMON_PRACTICE, "");
    public static final Source STARTING_CHARGE = new Source("Q = n t I; at most 20 % of the rated ampere-hours for one series of starts",
            Status.COMMON_PRACTICE, "six starts of stored energy: 46 CFR 112.50-1(k) for emergency sets (retrieved)");
    public static final Source CHARGING_VOLTAGE = new Source("EN 50272-2, charging voltage per cell at 25 degC and -3 mV/K", Status.QUOTED, "");
    public static final Source CHARGER_CLASS_SUBCHAPTER_T = new Source("46 CFR 183.352 and 129.353", Status.RETRIEVED,
            "binds small passenger vessels");
    public static final Source CHARGER_CLASS_SUBCHAPTER_J = new Source("46 CFR 111.15-3", Status.RETRIEVED, "binds inspected ships");
    public static final Source HYDROGEN_EN_50272 = new Source("EN 50272-2 (IEC 62485-2): Q = 0.05 n Igas C / 1000 m3/h; openings 28 cm2 per m3/h",
            Status.QUOTED, "written for stationary rooms; a yardstick on a boat");
    public static final Source HYDROGEN_SUBCHAPTER_J = new Source("46 CFR 111.15-10: q = 0.11 I n m3/h", Status.FROM_MEMORY,
            "46 CFR 183.354(a) points to it (retrieved)");
    public static final Source RESTRAINT_33_CFR = new Source("33 CFR 183.420(a)", Status.RETRIEVED, "binds gasoline boats; practice elsewhere");
    public static final Source RESTRAINT_ISO = new Source("ISO 10133 clause 5, now in ISO 13297", Status.QUOTED, "");

    private BatterySources() {
    }
}
