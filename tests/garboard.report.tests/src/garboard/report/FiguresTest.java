// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.quantity.Angle;
import garboard.quantity.Area;
import garboard.quantity.GaugePressure;
import garboard.quantity.Kind;
import garboard.quantity.Length;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;
import garboard.quantity.Resistance;
import garboard.quantity.Temperature;
import garboard.quantity.UnitSystem;

class FiguresTest {

    private final Figures metric = Figures.in(UnitSystem.SI);
    private final Figures customary = Figures.in(UnitSystem.US);

    @Test
    void writesQuantitiesWithTheSignsOfTheTrade() {
        assertThat(metric.text(Length.of(0.42))).isEqualTo("420 mm");
        assertThat(customary.text(Length.of(16.5, "in"))).isEqualTo("16.5 in");
        assertThat(metric.text(Temperature.of(205, "degF"))).isEqualTo("96.1 °C"); // (205 - 32) / 1.8 = 96.11
        assertThat(metric.text(Angle.of(25, "deg"))).isEqualTo("25°");
        assertThat(metric.text(Resistance.of(0.0021))).isEqualTo("2.1 mΩ");
        assertThat(customary.text(Ratio.of(0.85))).isEqualTo("85 %");
    }

    @Test
    void tellsConductorsInSquareMillimetresInEitherSystem() {
        assertThat(customary.text(Area.of(35, "mm2"))).isEqualTo("35 mm²");
        assertThat(customary.text(Area.of(20, "in2"))).isEqualTo("20 in²");
    }

    @Test
    void keepsTheValueUnroundedAndSaysHowManyDecimalsAreWorthPrinting() {
        Figures.Shown shown = metric.shown(GaugePressure.of(3, "inHg"));
        // NIST SP 811, table B.8: 1 inHg (conventional) = 3.386389 kPa
        assertThat(shown.value()).isCloseTo(10.159167, org.assertj.core.data.Offset.offset(1e-5));
        assertThat(shown.unit()).isEqualTo("kPa");
        assertThat(shown.decimals()).isEqualTo(1);
    }

    @Test
    void everySignIsReadBackByItsKind() {
        for (Kind<?> kind : Kind.all()) {
            for (String unit : kind.units()) {
                assertReadBack(kind, unit);
            }
        }
    }

    private static void assertReadBack(Kind<?> kind, String unit) {
        String sign = Figures.sign(unit);
        if (!sign.isEmpty()) {
            Quantity<?> plain = kind.of(80, unit);
            assertThat(kind.of(80, sign).si()).as(kind + " in " + sign).isEqualTo(plain.si());
        }
    }
}
