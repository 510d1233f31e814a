// SPDX-License-Identifier: EPL-2.0
package garboard.physics.geometry;

import static garboard.physics.PrintedQuantity.assertPrinted;
import static garboard.physics.geometry.HeeledHeightTest.envelope;
import static garboard.physics.geometry.HeeledHeightTest.point;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Length;

class PlaceToBuildTest {

    // recomputed independently from z = (m + d + |y| sin(phi) cos(theta) + |x| sin(theta)) / (cos(phi) cos(theta))
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # margin m | x m | y m | heel | trim | height
            0.20 | 0   | 1.0 | 30   | 0   | 0.8083 m
            0.20 | 0   | 0.1 | 30   | 0   | 0.2887 m
            0.20 | 1.5 | 0.3 | 30   | 3   | 0.4952 m
            0.20 | 0   | 1.2 | 7    | 0   | 0.3488 m
            0.20 | 0   | 1.2 | 22.5 | 0   | 0.7135 m
            0.20 | 2.0 | 1.2 | 22.5 | 7.5 | 1.0004 m
            """)
    void saysHowHighToBuild(double margin, double x, double y, double heel, double trim, String height) {
        Length built = PlaceToBuild.leastHeight(point(x, y, 0), envelope(heel, trim), Length.of(margin));
        assertPrinted(height, built);
        assertThat(HeeledHeight.lowest(point(x, y, built.si()), envelope(heel, trim)).height().si()).isCloseTo(margin, within(1e-12));
    }

    @Test
    void saysHowDeepAnIntakeHasToLie() {
        AttitudeEnvelope envelope = envelope(30, 3).withLift(Length.valueOf("40 mm"));
        Length built = PlaceToBuild.greatestHeightToStayWet(point(1, 0.5, 0), envelope, Length.valueOf("150 mm"));
        assertThat(HeeledHeight.highest(point(1, 0.5, built.si()), envelope).height().si()).isCloseTo(-0.150, within(1e-12));
    }

    @Test
    void saysHowFarOffTheCentrelineAPointMayStand() {
        // the first row above turned round: 0.8083 m is the height for 1.0 m off the centreline
        Length off = PlaceToBuild.greatestOffCentre(point(0, 9, 0.8083), envelope(30, 0), Length.valueOf("0.20 m")).orElseThrow();
        assertPrinted("1.000 m", off);
        assertThat(PlaceToBuild.greatestOffCentre(point(0, 0, 0.22), envelope(30, 0), Length.valueOf("0.20 m"))).isEmpty();
        assertThatThrownBy(() -> PlaceToBuild.greatestOffCentre(point(0, 0, 1), envelope(0, 0), Length.of(0)))
            .isInstanceOf(OutOfRangeException.class).hasMessageContaining("heel");
    }

    @Test
    void saysAtWhichHeelTheMarginIsGone() {
        var heel = PlaceToBuild.heelThatUsesUp(point(0, 1.0, 0.8083), envelope(0, 0), Length.valueOf("0.20 m")).orElseThrow();
        assertPrinted("30.00 deg", heel);
        var trimmed = PlaceToBuild.heelThatUsesUp(point(1.5, 0.3, 0.4952), envelope(0, 3), Length.valueOf("0.20 m")).orElseThrow();
        assertPrinted("30.0 deg", trimmed);
        assertThat(PlaceToBuild.heelThatUsesUp(point(0, 0, 0.1), envelope(0, 0), Length.valueOf("0.20 m"))).isEmpty();
    }

    @Test
    void refusesANegativeMargin() {
        assertThatThrownBy(() -> PlaceToBuild.leastHeight(point(0, 0, 0), envelope(30, 0), Length.valueOf("-1 mm")))
            .isInstanceOf(OutOfRangeException.class).hasMessage("margin is -1 mm, but has to be 0 or more");
    }
}
