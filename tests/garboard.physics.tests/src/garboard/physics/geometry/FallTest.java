// SPDX-License-Identifier: EPL-2.0
package garboard.physics.geometry;

import static garboard.physics.PrintedQuantity.assertPrinted;
import static garboard.physics.geometry.HeeledHeightTest.attitude;
import static garboard.physics.geometry.HeeledHeightTest.envelope;
import static garboard.physics.geometry.HeeledHeightTest.point;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.quantity.Slope;

class FallTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # run | drop at half an inch per foot: Gerr's figure, arithmetic
            2.4 m | 100 mm
            1.2 m | 50 mm
            3.0 m | 125 mm
            12 ft | 6.0 in
            """)
    void givesTheDropOfARun(String run, String drop) {
        Fall.Run horizontal = new Fall.Run(Length.valueOf(run));
        Length needed = Fall.dropFor(Fall.HALF_INCH_PER_FOOT, horizontal);
        assertPrinted(drop, needed);
        assertThat(Fall.slope(needed, horizontal).si()).isCloseTo(Fall.HALF_INCH_PER_FOOT.si(), within(1e-15));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # angle | slope: tangent, recomputed independently
            2 deg     | 34.9 mm/m
            5 deg     | 87.5 mm/m
            10 deg    | 176.3 mm/m
            2.386 deg | 41.7 mm/m
            2.386 deg | 0.500 in/ft
            """)
    void turnsAnglesIntoSlopes(String angle, String slope) {
        assertPrinted(slope, Fall.leastAtRest(Slope.of(0), Angle.valueOf(angle)));
    }

    @Test
    void leavesTheFallLessTheTrim() {
        // recomputed independently: 2.386 - 3 = -0.614 deg
        assertPrinted("-0.614 deg", Fall.left(Fall.HALF_INCH_PER_FOOT, Angle.valueOf("3 deg")));
        Slope built = Fall.leastAtRest(Fall.HALF_INCH_PER_FOOT, Angle.valueOf("3 deg"));
        assertThat(Fall.left(built, Angle.valueOf("3 deg")).si()).isCloseTo(1.0 / 24, within(1e-14));
    }

    @Test
    void followsARunThroughTheEnvelope() {
        BoatPoint start = point(0, 0, 0.500);
        BoatPoint end = point(-2.4, 0, 0.400);
        assertPrinted("2.386 deg", Fall.between(start, end, Attitude.upright()));
        // aft run, bow down by 3 deg: the same -0.614 deg as above
        assertPrinted("-0.614 deg", Fall.between(start, end, attitude(0, -3)));
        Fall.FallAt least = Fall.least(start, end, envelope(30, 3).withSinkage(Length.valueOf("100 mm")));
        assertThat(least.slope().si()).isLessThanOrEqualTo(Fall.between(start, end, attitude(0, -3)).si());
        assertPrinted("-3 deg", least.attitude().trim());
    }

    @Test
    void refusesRunsWithoutLength() {
        assertThatThrownBy(() -> Fall.slope(Length.of(1), new Fall.Run(Length.of(0)))).isInstanceOf(OutOfRangeException.class)
            .hasMessageContaining("run");
        assertThatThrownBy(() -> Fall.between(point(0, 0, 1), point(0, 0, 0), Attitude.upright())).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Fall.left(Slope.of(0.04), Angle.valueOf("50 deg"))).isInstanceOf(OutOfRangeException.class);
    }
}
