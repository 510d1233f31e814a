// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import static garboard.checks.Basis.handbook;
import static garboard.checks.Basis.regulation;
import static garboard.checks.Basis.standard;
import static garboard.checks.Basis.tradePress;

import garboard.checks.Basis;
import garboard.checks.Basis.Status;

/** The register of sources: every basis that a check cites, with how sure we are of its text. */
public final class Sources {

    // Handbooks
    public static final Basis GERR_CH_7 = handbook("Gerr, Boat Mechanical Systems Handbook (2009), ch. 7", Status.RETRIEVED);
    public static final Basis GERR_CH_16 = handbook("Gerr, Boat Mechanical Systems Handbook (2009), ch. 16", Status.RETRIEVED);
    public static final Basis GERR_CH_17 = handbook("Gerr, Boat Mechanical Systems Handbook (2009), ch. 17", Status.RETRIEVED);
    public static final Basis GERR_CH_19 = handbook("Gerr, Boat Mechanical Systems Handbook (2009), ch. 19", Status.RETRIEVED);
    public static final Basis GERR = handbook("Gerr, Boat Mechanical Systems Handbook (2009)", Status.RETRIEVED);
    public static final Basis MARINE_DIESEL_BASICS = handbook("Marine Diesel Basics 1", Status.RETRIEVED);

    // Voluntary standards, seen only as far as others quote them
    public static final Basis ABYC_P_1 = standard("ABYC P-1", Status.QUOTED);
    public static final Basis ABYC_H_27 = standard("ABYC H-27", Status.QUOTED);
    public static final Basis ABYC_E_11 = standard("ABYC E-11", Status.QUOTED);
    public static final Basis ISO_9093 = standard("ISO 9093:2020 (extract)", Status.RETRIEVED);

    // Trade press
    public static final Basis TRADE_PRESS = tradePress("marine trade press");

    // Raw water
    public static final Basis CHANDLER_GUIDE = tradePress("a chandler's guide to raw-water flow for each 100 bhp");
    public static final Basis PUMP_PIPING_TABLES = tradePress("tables of usual velocities in pump piping");
    public static final Basis CLASS_RULES = standard("a classification society's rules, in summary", Status.QUOTED);

    // Fuel
    public static final Basis FILTER_COUNCIL =
        new Basis(Basis.Kind.TRADE_PRESS, "published answers of a filter trade council", Status.RETRIEVED, "");
    public static final Basis ISO_7840 = standard("ISO 7840:2021 and ISO 8469:2021, scope", Status.RETRIEVED);
    public static final Basis ISO_16147 = standard("ISO 16147:2020, 5.1.4 (extract)", Status.RETRIEVED);

    // Ventilation
    public static final Basis ISO_11105 = standard("ISO 11105:2020 (extract)", Status.RETRIEVED);

    // Siphon break and exhaust
    public static final Basis TRADE_PRESS_2017 = tradePress("marine trade press, 2017");
    public static final Basis TRADE_PRESS_2021 = tradePress("marine trade press, 2021");
    public static final Basis UK_CODE_SECTION_7 =
        standard("Code of practice for small commercial vessels (UK), section 7, Machinery", Status.RETRIEVED);
    public static final Basis ABYC_P_1_CLAMPS = standard("ABYC P-1.7.1.10.1", Status.QUOTED);
    public static final Basis ABYC_P_1_FROM_MEMORY = standard("ABYC P-1", Status.FROM_MEMORY);
    public static final Basis UL_1129 = standard("ABYC P-1 and UL 1129", Status.QUOTED);
    public static final Basis EXHAUST_HOSE_STANDARDS = standard("SAE J2006:2013 and ISO 13363:2016, scope", Status.RETRIEVED);

    // Starting battery and cables
    public static final Basis US_ARMY_STATE_OF_CHARGE =
        handbook("US Army TM 5-3805-262-20, state of charge by open-circuit voltage", Status.RETRIEVED);
    public static final Basis US_ARMY_CELL_SPREAD = handbook("US Army TM 9-6140-200-14, specific gravity of cells", Status.RETRIEVED);
    public static final Basis CRANKING_DEFINITIONS = standard("SAE J537, EN 50342-1 and IEC 60095-1", Status.QUOTED);
    public static final Basis SAE_J541 = standard("SAE J541", Status.QUOTED);
    public static final Basis EN_50272_2 = standard("EN 50272-2 (IEC 62485-2)", Status.QUOTED);
    public static final Basis ISO_10133_BATTERIES = standard("ISO 10133 clause 5, now in ISO 13297", Status.QUOTED);
    public static final Basis ISO_10133_CABLES = standard("ISO 10133 clause 7, now in ISO 13297", Status.QUOTED);
    public static final Basis ISO_10133_AMPACITY = standard("ISO 10133 annex A, now in ISO 13297", Status.FROM_MEMORY);
    public static final Basis ISO_13297 = standard("ISO 13297", Status.QUOTED);

    // AC output
    public static final Basis ISO_13297_6_8 = standard("ISO 13297, 6.8", Status.QUOTED);
    public static final Basis ISO_13297_6_10 = standard("ISO 13297, 6.10", Status.QUOTED);
    public static final Basis ISO_13297_13_2_1 = standard("ISO 13297, 13.2.1", Status.QUOTED);
    public static final Basis ISO_13297_FROM_MEMORY = standard("ISO 13297", Status.FROM_MEMORY);
    public static final Basis NFPA_70_250_122 = standard("NFPA 70 Table 250.122", Status.QUOTED);
    public static final Basis IEC_60898 = standard("IEC 60898-1, magnetic trip bands", Status.FROM_MEMORY);
    public static final Basis IEC_61008 = standard("IEC 61008 and IEC 61009", Status.QUOTED);
    public static final Basis BS_7671 = standard("BS 7671", Status.QUOTED);
    public static final Basis IEEE_43 = standard("IEEE 43-2013", Status.FROM_MEMORY);
    public static final Basis DGUV_203_032 = standard("DGUV Information 203-032, annex 5", Status.RETRIEVED);
    public static final Basis DGUV_203_071 = standard("DGUV Information 203-071, annex 5", Status.RETRIEVED);
    public static final Basis STANDBY_POWER_SYSTEMS =
        handbook("Uninterruptible Power Supplies and Standby Power Systems (2004), Table 1.1, after ISO 8528-5", Status.RETRIEVED);
    public static final Basis IMO_POWER_TABLE = handbook("IMO guidelines for the electric power table of the EEDI", Status.RETRIEVED);
    public static final Basis AGRICULTURAL_TEXTBOOK =
        handbook("an agricultural-engineering textbook, engine power by height and temperature", Status.RETRIEVED);

    // Alarms and safety
    public static final Basis ABYC_A_24 = standard("ABYC A-24 (2025), a summary", Status.RETRIEVED);
    public static final Basis UL_2034 = standard("UL 2034", Status.QUOTED);

    // Mounting
    public static final Basis ABYC_E_11_FROM_MEMORY = standard("ABYC E-11", Status.FROM_MEMORY);

    // The set
    public static final Basis ISO_8528_1 = standard("ISO 8528-1:2018", Status.QUOTED);

    private Sources() {
    }

    /** A section of 33 CFR whose own text was read. */
    public static Basis cfr33(String section) {
        return regulation("33 CFR " + section, Status.RETRIEVED);
    }

    /** A section of 46 CFR whose own text was read. */
    public static Basis cfr46(String section) {
        return regulation("46 CFR " + section, Status.RETRIEVED);
    }

    /** A section of 40 CFR whose own text was read. */
    public static Basis cfr40(String section) {
        return regulation("40 CFR " + section, Status.RETRIEVED);
    }

    /** A section of 33 CFR that is cited from memory, to be confirmed against the text. */
    public static Basis cfr33FromMemory(String section) {
        return regulation("33 CFR " + section, Status.FROM_MEMORY);
    }

    /** A section of 33 CFR read where somebody else reproduces it. */
    public static Basis cfr33Quoted(String section) {
        return regulation("33 CFR " + section, Status.QUOTED);
    }

    /** A section of 46 CFR that is cited from memory, to be confirmed against the text. */
    public static Basis cfr46FromMemory(String section) {
        return regulation("46 CFR " + section, Status.FROM_MEMORY);
    }

    /** A law whose text was read, taken as practice where it does not bind. */
    public static Basis yardstick(String law) {
        return new Basis(Basis.Kind.COMMON_PRACTICE, "common practice after " + law + ", which is no law here", Status.RETRIEVED, "");
    }
}
