// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rating;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.AbsolutePressure;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;

class DeratingTest {

    private static final SiteConditions HOT = SiteConditions.reference().withAir(Temperature.valueOf("45 degC")).withHumidity(Ratio.valueOf("60 %"))
            .withChargeCoolant(Temperature.valueOf("32 degC"));

    private static Iso3046Derating.Factors factors(EngineKind engine, SiteConditions site) {
        return Iso3046Derating.factors(engine, site, Iso3046Derating.USUAL_MECHANICAL_EFFICIENCY);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            DIESEL_NATURALLY_ASPIRATED_AIR_LIMITED       | .8899 | ISO 3046-1 formula and exponents from memory, recomputed independently
            DIESEL_NATURALLY_ASPIRATED_THERMALLY_LIMITED | .9261 | ISO 3046-1 formula and exponents from memory, recomputed independently
            DIESEL_TURBOCHARGED                          | .8569 | ISO 3046-1 formula and exponents from memory, recomputed independently
            DIESEL_TURBOCHARGED_CHARGE_AIR_COOLED        | .8870 | ISO 3046-1 formula and exponents from memory, recomputed independently
            SPARK_IGNITION_NATURALLY_ASPIRATED           | .9073 | ISO 3046-1 formula and exponents from memory, recomputed independently
            """)
    void leavesPowerInAHotCompartment(EngineKind engine, String left, String source) {
        assertPrinted(left, factors(engine, HOT).brakePower().si());
    }

    @Test
    void leavesIndicatedPowerInAHotCompartment() {
        // ISO 3046-1 formula and exponents from memory, recomputed independently
        assertPrinted(".9063", factors(EngineKind.DIESEL_NATURALLY_ASPIRATED_AIR_LIMITED, HOT).indicatedPower().si());
    }

    @Test
    void leavesPowerOnAMountainLake() {
        // ISO 3046-1 formula and exponents from memory, recomputed independently: 1000 m (89.87 kPa), 30 degC, 60 %
        SiteConditions lake = SiteConditions.reference().withBarometer(AbsolutePressure.valueOf("89.87 kPa")).withAir(Temperature.valueOf("30 degC"))
                .withHumidity(Ratio.valueOf("60 %"));
        assertPrinted(".8481", factors(EngineKind.DIESEL_NATURALLY_ASPIRATED_AIR_LIMITED, lake).brakePower().si());
    }

    @ParameterizedTest
    @CsvSource({ "101.325 kPa, 0, 1", "89.875 kPa, 1000, 1", "79.495 kPa, 2000, 1", "69.68 kPa, 3048, 1" }) // ISO 2533 (ICAO) table, from memory
    void tellsTheHeightByTheBarometer(String barometer, double heightM, double half) {
        assertThat(Atmosphere.standardHeight(AbsolutePressure.valueOf(barometer)).si()).isCloseTo(heightM, within(half));
    }

    @Test
    void refusesABarometerThatNoHeightHas() {
        assertThatThrownBy(() -> Atmosphere.standardHeight(AbsolutePressure.valueOf("10 kPa"))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Atmosphere.standardHeight(AbsolutePressure.valueOf("120 kPa"))).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @EnumSource(EngineKind.class)
    void changesNothingAtReferenceConditions(EngineKind engine) {
        Iso3046Derating.Factors reference = factors(engine, SiteConditions.reference());
        assertThat(reference.brakePower().si()).isCloseTo(1, within(1e-12)); // ISO 3046-1: a = 1 at reference
        assertThat(reference.fuelConsumption().si()).isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(EngineKind.class)
    void leavesLessPowerTheHotterAndTheThinnerTheAir(EngineKind engine) {
        double before = 2;
        for (int celsius = 0; celsius <= 55; celsius += 5) {
            double now = factors(engine, SiteConditions.reference().withAir(Temperature.of(celsius, "degC"))).brakePower().si();
            assertThat(now).isLessThan(before);
            before = now;
        }
        double thin = factors(engine, SiteConditions.reference().withBarometer(AbsolutePressure.valueOf("80 kPa"))).brakePower().si();
        assertThat(thin).isLessThan(1);
        assertThat(factors(engine, HOT).fuelConsumption().si()).isGreaterThan(1);
    }

    @Test
    void refusesConditionsOutsideTheFormula() {
        assertThatThrownBy(() -> SiteConditions.reference().withAir(Temperature.valueOf("75 degC"))).isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("air temperature");
        assertThatThrownBy(() -> SiteConditions.reference().withBarometer(AbsolutePressure.valueOf("1 kPa"))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SiteConditions.reference().withHumidity(Ratio.valueOf("120 %"))).isInstanceOf(OutOfRangeException.class);
        SiteConditions peak = HOT.withBarometer(AbsolutePressure.valueOf("50 kPa"));
        assertThatThrownBy(() -> Iso3046Derating.factors(EngineKind.DIESEL_NATURALLY_ASPIRATED_AIR_LIMITED, peak, Ratio.of(0.5)))
                .isInstanceOf(OutOfRangeException.class).hasMessageContaining("30 %");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0 m      | 101.325 | ICAO standard atmosphere
            1000 m   | 89.87   | ICAO standard atmosphere (from memory 898.7 hPa)
            2000 m   | 79.50   | ICAO standard atmosphere (from memory 795.0 hPa)
            3000 m   | 70.11   | ICAO standard atmosphere (from memory 701.1 hPa)
            10000 ft | 69.68   | ICAO standard atmosphere (from memory 696.8 hPa)
            11000 m  | 22.63   | ICAO standard atmosphere (from memory 226.3 hPa)
            """)
    void knowsThePressureAtAHeight(String height, String kilopascal, String source) {
        assertPrinted(kilopascal, Atmosphere.standardPressure(Length.valueOf(height)).in("kPa"));
    }

    @Test
    void supportsTheFactorOfATextbookExample() {
        // Handbook of Energy Engineering Calculations, pp. 201-202: .68 at 10 000 ft; the pressure ratio there is .688
        double ratio = Atmosphere.standardPressure(Length.valueOf("10000 ft")).si() / Atmosphere.standardPressure(Length.of(0)).si();
        assertPrinted(".688", ratio);
        assertThatThrownBy(() -> Atmosphere.standardPressure(Length.valueOf("12 km"))).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0 degC  | 0.6112 | steam tables (from memory)
            10 degC | 1.228  | steam tables (from memory)
            20 degC | 2.339  | steam tables (from memory)
            25 degC | 3.169  | steam tables (from memory)
            30 degC | 4.246  | steam tables (from memory)
            40 degC | 7.384  | steam tables (from memory)
            50 degC | 12.35  | steam tables (from memory)
            """)
    void knowsTheVapourPressureAsWellAsItsFormulaDoes(String air, double kilopascal, String source) {
        // The Magnus form claims no more than 0.6 % between -45 and 60 degC (from memory).
        assertThat(Atmosphere.saturationPressure(Temperature.valueOf(air)).in("kPa")).isCloseTo(kilopascal, withinPercentage(0.6));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # engine | rated | height | left
            DIESEL_NATURALLY_ASPIRATED | 225 | 4500 ft | 198 | agricultural-engineering textbook example
            DIESEL_NATURALLY_ASPIRATED | 225 | 500 ft  | 225 | agricultural-engineering textbook, onset
            TURBOCHARGED               | 225 | 4500 ft | 225 | agricultural-engineering textbook: turbocharged none
            """)
    void losesPowerWithHeightByTheTextbook(SimpleDerating.TextbookEngine engine, double rated, String height, String left, String source) {
        assertPrinted(left, rated * SimpleDerating.textbookHeight(engine, Length.valueOf(height)).si());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            SPARK_IGNITION             | 165 | 100 degF | 162.5 | agricultural-engineering textbook example
            DIESEL_NATURALLY_ASPIRATED | 100 | 45 degC  | 94.4  | agricultural-engineering textbook rule (5.6 % off), recomputed independently
            DIESEL_NATURALLY_ASPIRATED | 100 | 85 degF  | 100   | agricultural-engineering textbook, onset
            """)
    void losesPowerWithHeatByTheTextbook(SimpleDerating.TextbookEngine engine, double rated, String air, String left, String source) {
        assertPrinted(left, rated * SimpleDerating.textbookTemperature(engine, Temperature.valueOf(air)).si());
    }

    @Test
    void losesPowerByTheArmysRule() {
        // US Army 2 kW set manual, recomputed independently: 2000 W at 2000 m and 45 degC
        assertPrinted("1737", 2000 * SimpleDerating.usArmySmallSet(Length.valueOf("2000 m"), Temperature.valueOf("45 degC")).si());
        assertThat(SimpleDerating.usArmySmallSet(Length.valueOf("1219 m"), Temperature.valueOf("35 degC")).si()).isCloseTo(1, within(1e-12));
    }

    @Test
    void losesPowerInTheAlternator() {
        // Common practice: 3 % per 500 m above 1000 m, 3 % per 5 K above 40 degC
        assertPrinted("0.94", SimpleDerating.alternator(Length.valueOf("1500 m"), Temperature.valueOf("45 degC")).si());
        assertThat(SimpleDerating.alternator(Length.valueOf("0 m"), Temperature.valueOf("20 degC")).si()).isEqualTo(1);
        assertThatThrownBy(() -> SimpleDerating.alternator(Length.valueOf("5000 m"), Temperature.valueOf("20 degC")))
                .isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            DEGREES_40 | 40 degC   | 20.0 | 46 CFR 183.320(b)
            DEGREES_40 | 45 degC   | 16.0 | 46 CFR 183.320(b): nothing between 40 and 50
            DEGREES_40 | 50 degC   | 16.0 | 46 CFR 183.320(b)
            DEGREES_50 | 50 degC   | 20.0 | 46 CFR 183.320(b)
            DEGREES_40 | 122 degF  | 16.0 | 46 CFR 183.320(b): 50 degC (122 degF)
            """)
    void keepsFourFifthsInAHotCompartment(GeneratorAmbient builtFor, String space, String kilowatt, String source) {
        assertPrinted(kilowatt, 20 * builtFor.shareIn(Temperature.valueOf(space)).si());
    }

    @Test
    void hasNoRuleAbove50Degrees() {
        assertThatThrownBy(() -> GeneratorAmbient.DEGREES_40.shareIn(Temperature.valueOf("55 degC"))).isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("at most 50 degC"); // 46 CFR 183.320(b)
    }
}
