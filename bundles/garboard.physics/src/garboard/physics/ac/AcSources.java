// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Source;
import garboard.physics.Status;

/** Where the figures of this package come from. */
public final class AcSources {

    public static final Source DROOP = new Source("ISO 8528-5, related frequency droop: 100 (f no load - f declared) / f declared", Status.QUOTED,
            "so do US Army manuals (TM 9-6115 series) and UFGS 16237N, 16263A, 16264A (retrieved)");
    public static final Source FREQUENCY_BAND = new Source("ISO 8528-5, related steady-state frequency band: 100 (f max - f min) / f rated",
            Status.FROM_MEMORY, "the width of the envelope; UFGS prints the same numbers with plus and minus, twice as wide");
    public static final Source FREQUENCY_TRANSIENT = new Source(
            "Uninterruptible Power Supplies and Standby Power Systems (2004), ch. 1: drop from rated, rise from the initial frequency",
                    Status.RETRIEVED, "");
    public static final Source RECOVERY_TIME = new Source(
            "US Army generator-set manuals (TM 9-6115 series): from leaving the steady band to re-entering and staying", Status.RETRIEVED,
            "tolerance bands are from memory of ISO 8528-5");
    public static final Source STEADY_VOLTAGE = new Source("ISO 8528-5, steady-state voltage deviation: +/- 100 (U max - U min) / (2 U rated)",
            Status.FROM_MEMORY, "");
    public static final Source VOLTAGE_TRANSIENT = new Source(
            "US Army generator-set manuals (TM 9-6115 series): dip and rise against the rated voltage", Status.RETRIEVED, "");
    public static final Source UNBALANCE_NEMA = new Source("NEMA MG 1: largest deviation from the average over the average", Status.QUOTED, "");
    public static final Source UNBALANCE_IEC = new Source("negative over positive sequence from three line voltages (textbook form)",
            Status.FROM_MEMORY, "follows from the symmetrical components");
    public static final Source MOTOR_DERATING = new Source("NEMA MG 1, derating factor by voltage unbalance", Status.QUOTED,
            "points read from the curve");
    public static final Source PHASE_BALANCE = new Source("UFGS 16237N, 16263A, 16264A, phase balance of a generator", Status.RETRIEVED, "");
    public static final Source SPLIT_PHASE = new Source("Kirchhoff's law for two legs of like power factor", Status.DERIVED,
            "an imbalance of at most 25 % is common practice");
    public static final Source PERFORMANCE_CLASS = new Source(
            "ISO 8528-5 as printed in Uninterruptible Power Supplies and Standby Power Systems (2004), Table 1.1", Status.RETRIEVED,
            "that is the 1993 edition; tolerance band, spark-ignition drop and modulation are from memory; later editions were not seen");
    public static final Source NO_LOAD_CHECK = new Source("DGUV Information 203-032 annex 5", Status.RETRIEVED, "");
    public static final Source BASIC = new Source("definitions of apparent, active and reactive power; n = 120 f / p", Status.DERIVED, "");
    public static final Source CODE_LETTERS = new Source("NEMA MG 1 locked-rotor kVA per horsepower by code letter", Status.QUOTED,
            "the lower end belongs to a letter, the upper end to the next");
    public static final Source REDUCED_START = new Source("common practice", Status.COMMON_PRACTICE,
            "star-delta a third, soft starter its current limit");
    public static final Source STARTING_DIP = new Source("textbook divider of the transient reactance: z / (1 + z), z = X'd S start / S rated",
            Status.FROM_MEMORY, "unloaded set; regulator and cable left out; X'd of 0.15 to 0.30 is common practice where unknown");
    public static final Source DEMAND_SUM = new Source("IMO guidelines for the electric power table of the EEDI: P load = P rated ku, ku = kl kd kt",
            Status.RETRIEVED, "P and Q are summed apart");
    public static final Source GALLEY_FEEDER = new Source("46 CFR Table 111.60-7, galley feeder", Status.RETRIEVED, "");
    public static final Source PANEL_FEEDER = new Source("ABYC E-11 load worksheet: sum of A + larger of the largest B and 10 % of the sum of B",
            Status.FROM_MEMORY, "");
    public static final Source SIZING_WINDOW = new Source("common practice", Status.COMMON_PRACTICE,
            "largest sustained demand 70 to 80 % of the rating, longest sustained at least 30 % for a diesel");
    public static final Source GENERATOR_DEVICE = new Source("46 CFR 183.320(f), 28.860(a); cable: Table 111.60-7", Status.RETRIEVED, "115 %");
    public static final Source MOTOR_TOLERANCE = new Source("NEMA MG 1: voltage +/-10 %, frequency +/-5 %, sum of absolute values at most 10 %",
            Status.QUOTED, "");
    public static final Source HUNTING = new Source("common practice", Status.COMMON_PRACTICE,
            "6 crossings of the mean, 80 % of the half periods within 30 % of their mean");
    public static final Source TRIP_BANDS = new Source("IEC 60898-1 magnetic trip bands: B 3 to 5, C 5 to 10, D 10 to 20 times the rating",
            Status.FROM_MEMORY, "a sustained short-circuit current of 3 times rated: Lloyd's Register naval rules 9-2-6.4 (retrieved)");
    public static final Source RESIDUAL_CURRENT = new Source("IEC 61008/61009 longest break times", Status.QUOTED,
            "boat rules ask 100 ms (ISO 13297, from memory); the shortest time of a delayed device at twice its rating is from memory");
    public static final Source PROTECTIVE_CONDUCTOR = new Source(
            "DGUV Information 203-071: 0.3 ohm up to 5 m, 0.1 ohm for each further 7.5 m, at most 1 ohm", Status.RETRIEVED, "circuits up to 16 A");
    public static final Source INSULATION_HALVING = new Source("IEEE 43, thermoplastic: halves for each 10 K", Status.FROM_MEMORY, "");
    public static final Source INSULATION_THERMOSET = new Source("IEEE 43-2013, thermosetting, 10 to 40 degC: exp(-1245 (1/T - 1/313))",
            Status.FROM_MEMORY, "");
    public static final Source CHARGER_INPUT = new Source("S = U I / (efficiency x power factor)", Status.DERIVED, "");
    public static final Source INRUSH = new Source("common practice", Status.COMMON_PRACTICE,
            "transformer 8 to 12, switch-mode 10 to 40 times rated");

    private AcSources() {
    }
}
