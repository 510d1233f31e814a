// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Mass;
import garboard.quantity.Power;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

class ChargingTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ABSORPTION            | 6  | 0 degC  | 14.85 | EN 50272-2 voltages and -3 mV/K, recomputed independently
            ABSORPTION            | 6  | 10 degC | 14.67 | EN 50272-2 voltages and -3 mV/K, recomputed independently
            ABSORPTION            | 6  | 25 degC | 14.40 | EN 50272-2: 2.40 V per cell
            ABSORPTION            | 6  | 40 degC | 14.13 | EN 50272-2 voltages and -3 mV/K, recomputed independently
            ABSORPTION            | 12 | 10 degC | 29.34 | EN 50272-2 voltages and -3 mV/K, recomputed independently
            FLOAT_VENTED          | 6  | 25 degC | 13.38 | EN 50272-2: 2.23 V per cell
            FLOAT_VALVE_REGULATED | 6  | 25 degC | 13.62 | EN 50272-2: 2.27 V per cell
            """)
    void compensatesTheChargingVoltage(ChargeStage stage, int cells, String battery, String voltage, String source) {
        assertPrinted(voltage, ChargingVoltage.at(stage, cells, Temperature.valueOf(battery)).si());
    }

    @Test
    void stopsCompensatingWhereChargersDo() {
        assertPrinted("15.21", ChargingVoltage.at(ChargeStage.ABSORPTION, 6, Temperature.valueOf("-20 degC")).si()); // 14.40 V + 45 K x 18 mV/K
        assertThatThrownBy(() -> ChargingVoltage.at(ChargeStage.ABSORPTION, 6, Temperature.valueOf("-21 degC")))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> ChargingVoltage.at(ChargeStage.ABSORPTION, 6, Temperature.valueOf("55 degC")))
                .isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # current | rated volts | watt | two classes | three classes
            60 A    | 12 V   | 720  | SMALL | MODERATE | 46 CFR 183.352; 111.15-3
            100 A   | 24 V   | 2400 | LARGE | LARGE    | 46 CFR 183.352; 111.15-3
            15 A    | 12 V   | 180  | SMALL | SMALL    | 46 CFR 111.15-3
            10 A    | 14.4 V | 144  | SMALL | SMALL    | 46 CFR 129.353; 111.15-3
            80 A    | 14.4 V | 1152 | SMALL | MODERATE | 46 CFR 129.353; 111.15-3
            80 A    | 28.8 V | 2304 | LARGE | LARGE    | 46 CFR 129.353; 111.15-3
            """)
    void classesAnInstallationByItsCharger(String current, String voltage, String watt, ChargerClass two, ChargerClass three, String source) {
        Power power = ChargerClass.power(Current.valueOf(current), Voltage.valueOf(voltage));
        assertPrinted(watt, power.si());
        assertThat(ChargerClass.subchapterT(power)).isEqualTo(two);
        assertThat(ChargerClass.subchapterJ(power)).isEqualTo(three);
    }

    @Test
    void keepsTheEndsOfTheRangesInTheMiddleClass() {
        // 46 CFR 183.352: large is more than 2 kW; 46 CFR 111.15-3: moderate is 0.2 to 2 kW
        assertThat(ChargerClass.subchapterT(Power.valueOf("2000 W"))).isEqualTo(ChargerClass.SMALL);
        assertThat(ChargerClass.subchapterJ(Power.valueOf("2000 W"))).isEqualTo(ChargerClass.MODERATE);
        assertThat(ChargerClass.subchapterJ(Power.valueOf("200 W"))).isEqualTo(ChargerClass.MODERATE);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # gassing | cells | capacity | m3/h | cm2
            VENTED_BOOST          | 12 | 200 Ah | 2.40 | 67 | EN 50272-2 formula, recomputed independently
            VALVE_REGULATED_BOOST | 12 | 200 Ah | 0.96 | 27 | EN 50272-2 formula, recomputed independently
            VENTED_BOOST          | 6  | 100 Ah | 0.60 | 17 | EN 50272-2 formula, recomputed independently
            """)
    void airsAChargingBattery(GassingRate gassing, int cells, String capacity, String flow, String opening, String source) {
        var air = HydrogenVentilation.en50272(gassing, cells, Charge.valueOf(capacity));
        assertPrinted(flow, air.in("m3/h"));
        assertPrinted(opening, HydrogenVentilation.naturalOpening(air).in("cm2"));
    }

    @Test
    void airsInCubicFeetAMinute() {
        // EN 50272-2 formula for 12 cells of 200 Ah, converted with 1.699011 m3/h per cfm
        assertPrinted("1.41", HydrogenVentilation.en50272(GassingRate.VENTED_BOOST, 12, Charge.valueOf("200 Ah")).in("cfm"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            25 A | 12 | 33.0 | 19.42 | 46 CFR 111.15-10 q = 0.11 I n (from memory), recomputed independently
            10 A | 6  | 6.6  | 3.885 | 46 CFR 111.15-10 q = 0.11 I n (from memory), recomputed independently
            """)
    void airsALargeBatteryByTheShipRule(String current, int cells, String cubicMetre, String cubicFoot, String source) {
        var air = HydrogenVentilation.subchapterJ(Current.valueOf(current), cells);
        assertPrinted(cubicMetre, air.in("m3/h"));
        assertPrinted(cubicFoot, air.in("cfm"));
    }

    @Test
    void takesTheLargerOfGassingCurrentAndAQuarterOfTheMaximum() {
        var weak = new HydrogenVentilation.ChargerCurrents(Current.valueOf("5 A"), Current.valueOf("100 A"));
        var strong = new HydrogenVentilation.ChargerCurrents(Current.valueOf("40 A"), Current.valueOf("100 A"));
        assertThat(HydrogenVentilation.chargingCurrentSubchapterJ(weak).si()).isEqualTo(25); // 46 CFR 111.15-10, from memory
        assertThat(HydrogenVentilation.chargingCurrentSubchapterJ(strong).si()).isEqualTo(40);
        assertThatThrownBy(() -> new HydrogenVentilation.ChargerCurrents(Current.valueOf("100 A"), Current.valueOf("40 A")))
                .isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            30 lb | 60  | 33 CFR 183.420(a)
            44 lb | 88  | 33 CFR 183.420(a)
            45 lb | 90  | 33 CFR 183.420(a)
            60 lb | 90  | 33 CFR 183.420(a)
            """)
    void pullsABatteryWithTwiceItsWeightUpTo90Pounds(String mass, String poundForce, String source) {
        assertPrinted(poundForce, BatteryRestraint.pull33Cfr183(Mass.valueOf(mass)).in("lbf"));
    }

    @Test
    void pullsABatteryInNewton() {
        assertPrinted("400", BatteryRestraint.pull33Cfr183(Mass.valueOf("25 kg")).si()); // 33 CFR 183.420(a): 400 N (90 lbf)
        assertPrinted("294", BatteryRestraint.pull33Cfr183(Mass.valueOf("15 kg")).si()); // twice the weight, recomputed independently
        assertPrinted("490", BatteryRestraint.pullIso(Mass.valueOf("25 kg")).si()); // ISO 10133 clause 5: twice the weight
    }
}
