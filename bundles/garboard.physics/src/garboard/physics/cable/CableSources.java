// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import garboard.physics.Source;
import garboard.physics.Status;

/** Where the figures of this package come from. */
public final class CableSources {

    public static final Source AWG = new Source("American wire gauge (ASTM B258): d = 0.127 mm x 92^((36 - n)/39)", Status.FROM_MEMORY,
            "agrees with the tables of NBS Circular 31");
    public static final Source ANNEALED_COPPER = new Source("NBS Circular 31, annealed copper: 17.241 ohm mm2/km at 20 degC, 0.00393 per K",
            Status.RETRIEVED, "stranded cable lies 2 to 4 % higher");
    public static final Source IEC_60228 = new Source("IEC 60228, maximum conductor resistance at 20 degC", Status.QUOTED, "");
    public static final Source SAE_GAUGE = new Source("SAE-gauge conductor areas as printed in boat-wiring tables", Status.QUOTED, "");
    public static final Source ROUND_TRIP_DROP = new Source("Ohm's law over the positive and the negative conductor", Status.DERIVED, "");
    public static final Source THREE_PHASE_DROP = new Source("Ohm's law in each line, sqrt(3) times between the lines of a balanced load",
            Status.DERIVED, "reactance left out");
    public static final Source CIRCULAR_MIL_METHOD = new Source("ABYC E-11: CM = 10.75 I L / E", Status.QUOTED,
            "10.75 is solid copper at 29 degC; no federal regulation sets a voltage drop");
    public static final Source DROP_ALLOWANCE = new Source("ABYC E-11: 3 % and 10 % of the nominal voltage", Status.QUOTED, "");
    public static final Source CRANKING_CIRCUIT = new Source("SAE J541, voltage drop for starting motor circuits", Status.QUOTED,
            "at 20 degC, posts to starter terminals, joints and both sides included, motor, relay and solenoid not");
    public static final Source AMPACITY_33_CFR = new Source("33 CFR 183.425 Table 5", Status.RETRIEVED,
            "binds gasoline boats; cranking conductors are outside it (183.425(g))");
    public static final Source ENGINE_SPACE_33_CFR = new Source("33 CFR 183.425 Table 5 note 1, engine space at 50 degC", Status.FROM_MEMORY,
            "0.85 at 105 degC is quoted; 60, 75 and 90 degC agree with NFPA 70");
    public static final Source BUNDLE_33_CFR = new Source("33 CFR 183.435(b) and Table 5 note 2", Status.QUOTED, "the rule itself is retrieved");
    public static final Source AMPACITY_ISO = new Source("ISO 10133 annex A, now in ISO 13297", Status.FROM_MEMORY, "confirm against the standard");
    public static final Source OVERCURRENT_33_CFR = new Source("33 CFR 183.455(c)", Status.RETRIEVED, "");
    public static final Source STANDARD_DEVICE_SIZES = new Source("NFPA 70, 240.6 standard ampere ratings", Status.FROM_MEMORY, "");
    public static final Source OVERCURRENT_ISO = new Source("ISO 13297: rating never above the permitted current", Status.QUOTED, "");
    public static final Source ALTERNATOR_DEVICE = new Source("33 CFR 183.460(b): 120 % of the rated current unless self-limiting",
            Status.FROM_MEMORY, "");
    public static final Source TERMINAL_PULL = new Source("ABYC E-11, tensile test of terminals", Status.FROM_MEMORY, "");
    public static final Source EQUIPMENT_GROUNDING = new Source("NFPA 70 Table 250.122, copper", Status.QUOTED,
            "required by 46 CFR 28.350(g), 129.370(c), 183.372(c) (retrieved)");
    public static final Source NEUTRAL_GROUNDING = new Source("46 CFR Table 111.05-31(b)", Status.RETRIEVED, "");
    public static final Source DC_GROUNDING = new Source("46 CFR 111.05-31(a)", Status.RETRIEVED, "");

    private CableSources() {
    }
}
