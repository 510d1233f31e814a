// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected texts follow from the factors that {@link ConversionFactorsTest} holds to their source, rounded by hand. */
class DisplayTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        length                 | 0.15432 m      | 154 mm           | 6.08 in
        length                 | 1.556 m        | 1.56 m           | 61.3 in
        length                 | 42 in          | 1.07 m           | 42 in
        length                 | 12.34 m        | 12.3 m           | 40.5 ft
        length                 | 0 m            | 0 mm             | 0 in
        length                 | -110.3 mm      | -110 mm          | -4.34 in
        area                   | 35 mm2         | 35 mm2           | 0.0543 in2
        area                   | 120 mm2        | 120 mm2          | 0.186 in2
        area                   | 88.9 cm2       | 88.9 cm2         | 13.8 in2
        area                   | 2 m2           | 2 m2             | 21.5 ft2
        volume                 | 3.243 L        | 3.24 L           | 0.857 gal
        volume                 | 14 m3          | 14 m3            | 3698 gal
        mass                   | 245.6 kg       | 246 kg           | 541 lb
        angle                  | 0.5236 rad     | 30 deg           | 30 deg
        slope                  | 2.386 deg      | 41.7 mm/m        | 0.5 in/ft
        time span              | 77.1 s         | 77.1 s           | 77.1 s
        time span              | 1800 s         | 30 min           | 30 min
        time span              | 5 h            | 5 h              | 5 h
        frequency              | 59.984 Hz      | 59.98 Hz         | 59.98 Hz
        rotational speed       | 1794 rpm       | 1794 r/min       | 1794 r/min
        absolute pressure      | 101325 Pa      | 101.3 kPa        | 29.92 inHg
        gauge pressure         | 38 psi         | 262 kPa          | 38 psi
        gauge pressure         | 8466 Pa        | 8.47 kPa         | 2.5 inHg
        gauge pressure         | 63 Pa          | 63 Pa            | 0.253 inH2O
        gauge pressure         | -10 kPa        | -10 kPa          | -2.95 inHg
        temperature            | 74 degC        | 74 degC          | 165 degF
        temperature            | 85.26 degC     | 85.3 degC        | 185 degF
        temperature            | 0 degC         | 0 degC           | 32 degF
        temperature difference | 16 K           | 16 K             | 28.8 degF
        volume flow            | 24.4 L/min     | 24.4 L/min       | 6.45 gal/min
        volume flow            | 6.6 L/h        | 6.6 L/h          | 1.74 gal/h
        volume flow            | 23.4 m3/min    | 23.4 m3/min      | 826 ft3/min
        power                  | 22470 W        | 22.5 kW          | 22.5 kW
        power                  | 800 W          | 800 W            | 800 W
        apparent power         | 8125 VA        | 8.13 kVA         | 8.13 kVA
        voltage                | 12.744 V       | 12.74 V          | 12.74 V
        voltage                | 230.44 V       | 230.4 V          | 230.4 V
        voltage                | 0.35 V         | 350 mV           | 350 mV
        resistance             | 0.00042 ohm    | 420 uohm         | 420 uohm
        resistance             | 2.5 Mohm       | 2.5 Mohm         | 2.5 Mohm
        charge                 | 360000 C       | 100 Ah           | 100 Ah
        specific consumption   | 250 g/kWh      | 250 g/kWh        | 0.411 lb/(hp.h)
        heating value          | 42.7 MJ/kg     | 42.7 MJ/kg       | 18358 BTU/lb
        ratio                  | 0.8            | 80 %             | 80 %
        ratio                  | 35 ppm         | 35 ppm           | 35 ppm
        density                | 1025 kg/m3     | 1025 kg/m3       | 63.99 lb/ft3
        """)
    void writesTheCustomaryUnitWithTheDigitsWorthPrinting(String kindName, String text, String si, String us) {
        Quantity<?> quantity = Kind.named(kindName).orElseThrow().parse(text);

        assertThat(Display.of(UnitSystem.SI).format(quantity)).isEqualTo(si);
        assertThat(Display.of(UnitSystem.US).format(quantity)).isEqualTo(us);
    }

    @Test
    void writesTheUnitAskedFor() {
        assertThat(Display.formatIn(Length.of(0.3048), "ft")).isEqualTo("1 ft");
        assertThat(Display.formatIn(GaugePressure.valueOf("3 inHg"), "kPa")).isEqualTo("10.2 kPa");
        assertThat(Display.formatIn(SpecificConsumption.of(250, "g/kWh"), "kg/J")).isEqualTo("6.94e-8 kg/J");
        assertThatThrownBy(() -> Display.formatIn(Length.of(1), "kg")).isInstanceOf(QuantityFormatException.class);
    }

    @Test
    void neverRoundsADigitBeforeThePoint() {
        assertThat(Display.formatIn(Length.of(12345.6), "m")).isEqualTo("12346 m");
    }

    @Test
    void writesAPointWhateverTheLanguageOfTheMachine() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Display.of(UnitSystem.SI).format(Length.of(1.5))).isEqualTo("1.5 m");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void knowsItsSystem() {
        assertThat(Display.of(UnitSystem.US).system()).isEqualTo(UnitSystem.US);
    }
}
