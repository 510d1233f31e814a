// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.ResistancePerLength;
import garboard.quantity.Temperature;

class ConductorResistanceTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # gauge | ohm per 1000 ft | ohm/km
            18 AWG  | 6.385   | 20.95  | NBS Circular 31 as quoted by a third party; ohm/km recomputed independently
            16 AWG  | 4.02    | 13.17  | NBS Circular 31 (4.016 there, by a diameter rounded to 50.82 mil); ohm/km recomputed independently
            14 AWG  | 2.525   | 8.285  | NBS Circular 31 as quoted by a third party; ohm/km recomputed independently
            12 AWG  | 1.588   | 5.211  | NBS Circular 31 as quoted by a third party; ohm/km recomputed independently
            10 AWG  | 0.999   | 3.277  | NBS Circular 31 (0.9989 there, by a diameter rounded to 101.9 mil); ohm/km recomputed independently
            8 AWG   | 0.6282  | 2.061  | NBS Circular 31 (from memory); ohm/km recomputed independently
            6 AWG   | 0.3951  | 1.296  | NBS Circular 31 (from memory); ohm/km recomputed independently
            4 AWG   | 0.2485  | 0.8152 | NBS Circular 31 (from memory); ohm/km recomputed independently
            2 AWG   | 0.1563  | 0.5127 | NBS Circular 31 (from memory); ohm/km recomputed independently
            1/0 AWG | 0.09827 | 0.3224 | NBS Circular 31 (from memory); ohm/km recomputed independently
            2/0 AWG | 0.07793 | 0.2557 | NBS Circular 31 (from memory); ohm/km recomputed independently
            3/0 AWG | 0.06180 | 0.2028 | NBS Circular 31 (from memory); ohm/km recomputed independently
            4/0 AWG | 0.04901 | 0.1608 | NBS Circular 31 (from memory); ohm/km recomputed independently
            """)
    void givesTheResistanceOfAnnealedCopper(String gauge, String per1000Ft, String perKm, String source) {
        double ohmPerM = ConductorResistance.annealedCopper(ConductorSize.valueOf(gauge)).si();
        assertPrinted(per1000Ft, ohmPerM * 304.8);
        assertPrinted(perKm, ohmPerM * 1000);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.5 mm2 | CLASS_5_PLAIN  | 39.0   | IEC 60228, quoted by a third party
            1.5 mm2 | CLASS_2_PLAIN  | 12.1   | IEC 60228, quoted by a third party
            2.5 mm2 | CLASS_2_COATED | 7.56   | IEC 60228, quoted by a third party
            6 mm2   | CLASS_5_COATED | 3.39   | IEC 60228, quoted by a third party
            10 mm2  | CLASS_5_PLAIN  | 1.91   | IEC 60228, quoted by a third party
            16 mm2  | CLASS_2_PLAIN  | 1.15   | IEC 60228, quoted by a third party
            50 mm2  | CLASS_5_PLAIN  | 0.386  | IEC 60228, quoted by a third party
            50 mm2  | CLASS_2_PLAIN  | 0.387  | IEC 60228, quoted by a third party
            70 mm2  | CLASS_5_PLAIN  | 0.272  | IEC 60228, quoted by a third party
            95 mm2  | CLASS_5_COATED | 0.210  | IEC 60228, quoted by a third party
            240 mm2 | CLASS_2_PLAIN  | 0.0754 | IEC 60228, quoted by a third party
            630 mm2 | CLASS_5_COATED | 0.0292 | IEC 60228, quoted by a third party
            """)
    void readsTheStandardsMaximum(String size, StrandClass make, String perKm, String source) {
        assertPrinted(perKm, ConductorResistance.iec60228(ConductorSize.valueOf(size), make).in("ohm/km"));
    }

    @ParameterizedTest
    @EnumSource(StrandClass.class)
    void fallsWithSizeAndStaysAboveSolidCopper(StrandClass make) {
        ResistancePerLength thinner = ResistancePerLength.of(1);
        for (ConductorSize size : ConductorSeries.IEC) {
            ResistancePerLength now = ConductorResistance.iec60228(size, make);
            assertThat(now).isLessThan(thinner);
            // No cable is better than solid copper of its nominal size, 17.241 ohm mm2/km, and thin tinned strands are a fifth worse at most.
            assertThat(now.si() * size.area().si() * 1e9).isBetween(17.241, 17.241 * 1.2);
            thinner = now;
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.272 ohm/km | 50 degC | 0.3041 | NBS coefficient 0.00393 per K, recomputed independently
            0.272 ohm/km | 60 degC | 0.3148 | NBS coefficient 0.00393 per K, recomputed independently
            1 ohm/km     | 50 degC | 1.1179 | NBS coefficient 0.00393 per K, recomputed independently
            1 ohm/km     | 20 degC | 1.0000 | NBS reference temperature
            """)
    void growsWithTemperature(String at20, String temperature, String hot, String source) {
        assertPrinted(hot, ConductorResistance.atTemperature(ResistancePerLength.valueOf(at20), Temperature.valueOf(temperature)).in("ohm/km"));
    }

    @Test
    void takesSolidCopperWhereTheStandardListsNoSize() {
        ConductorSize odd = ConductorSize.squareMillimetre(8.4);
        assertThat(ConductorResistance.at20(odd, StrandClass.CLASS_5_PLAIN)).isEqualTo(ConductorResistance.annealedCopper(odd));
        ConductorSize listed = ConductorSize.squareMillimetre(10);
        assertThat(ConductorResistance.at20(listed, StrandClass.CLASS_5_PLAIN))
                .isEqualTo(ConductorResistance.iec60228(listed, StrandClass.CLASS_5_PLAIN));
        assertThatThrownBy(() -> ConductorResistance.iec60228(odd, StrandClass.CLASS_2_PLAIN)).isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("8.4 mm2");
        assertThatThrownBy(() -> ConductorResistance.iec60228(ConductorSize.awg(10), StrandClass.CLASS_2_PLAIN))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void refusesTemperaturesNoCableStands() {
        assertThatThrownBy(() -> ConductorResistance.atTemperature(ResistancePerLength.of(0.001), Temperature.valueOf("250 degC")))
                .isInstanceOf(OutOfRangeException.class).hasMessageContaining("conductor temperature");
    }
}
