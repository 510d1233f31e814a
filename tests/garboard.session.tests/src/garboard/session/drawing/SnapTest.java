// SPDX-License-Identifier: EPL-2.0
package garboard.session.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.quantity.Length;
import garboard.quantity.UnitSystem;

/** Expected values: the inch is 25.4 mm exactly (NIST Special Publication 811, appendix B), so an eighth of it is 3.175 mm. */
class SnapTest {

    private static Snap after(String before) {
        return new Snap(Optional.of(Length.valueOf(before)), UnitSystem.SI);
    }

    @ParameterizedTest
    @CsvSource({
        "620 mm, 0.6314, 631 mm",
        "0.62 m, 0.6314, 0.631 m",
        "0.62 m, 0.63, 0.63 m",
        "0.620 m, 0.63, 0.630 m",
        "0.6 m, 0.7, 0.7 m",
        "62 cm, 0.6314, 63.1 cm",
        "-0.25 m, -0.2004, -0.20 m",
        "-0.25 m, 0.0004, 0.00 m",
        "11.5 in, 0.2953, 11.625 in",
        "11 1/2 in, 0.2953, 11 5/8 in",
        "11 1/2 in, -0.0032, -1/8 in",
        "11 1/2 in, 0.3048, 12 in",
        "5 ft 3 in, 1.6034, 5 ft 3 1/8 in",
        "1.5 ft, 0.3049, 1 ft",
        "1.5 ft, -0.4572, -1 ft 6 in"
    })
    void writesAsThePersonDid(String before, double metres, String expected) {
        Snap snap = after(before);
        assertThat(snap.at(metres, snap.finest())).hasToString(expected);
    }

    @Test
    void keepsTheAccuracyOfTheTape() {
        assertThat(after("11.5 in \u00b10.25 in").at(0.3048, 0.003175)).hasToString("12.0 in \u00b10.25 in");
        assertThat(after("0.62 m \u00b10.01 m").at(0.631, 0.001).accuracySi()).hasValueCloseTo(0.01, offset(1e-9));
    }

    @Test
    void takesTheReadersUnitsWhereNothingWasGiven() {
        assertThat(new Snap(Optional.empty(), UnitSystem.SI).at(0.1234, 0.001)).hasToString("123 mm");
        assertThat(new Snap(Optional.empty(), UnitSystem.US).at(0.2953, 0.003175)).hasToString("11 5/8 in");
    }

    @Test
    void stepsAreRoundAndNoFinerThanAHandCanHit() {
        Snap metric = after("620 mm");
        assertThat(metric.step(0.0008)).isCloseTo(0.001, offset(1e-12));
        assertThat(metric.step(0.011)).isCloseTo(0.010, offset(1e-12)); // half a point is 5.5 mm: the next round step is 10 mm
        assertThat(metric.step(1)).isCloseTo(0.050, offset(1e-12));
        Snap inches = after("11.5 in");
        assertThat(inches.step(0.001)).isCloseTo(0.003175, offset(1e-12));
        assertThat(inches.step(0.011)).isCloseTo(0.00635, offset(1e-12)); // half a point is 5.5 mm: a quarter inch
    }

    @Test
    void goesToTheNextWholeStepFromBetweenTwo() {
        assertThat(after("620 mm").next(0.6204, 0.001, 1)).hasToString("621 mm");
        assertThat(after("620 mm").next(0.6204, 0.001, -1)).hasToString("620 mm");
        assertThat(after("620 mm").next(0.620, 0.001, -1)).hasToString("619 mm");
        assertThat(after("11.5 in").next(11.5 * 0.0254, 0.003175, 1)).hasToString("11.625 in");
    }

    @Test
    void whatIsWrittenIsWithinHalfAStepOfThePointer() {
        for (String before : new String[] {"620 mm", "0.62 m", "62 cm", "11.5 in", "11 1/2 in", "5 ft 3 in"}) {
            Snap snap = after(before);
            for (double metres = -2.345; metres < 2.4; metres += 0.0371) {
                assertThat(snap.at(metres, snap.finest()).si()).as(before).isCloseTo(metres, offset(snap.finest() / 2 + 1e-9));
            }
        }
    }
}
