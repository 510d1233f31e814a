// SPDX-License-Identifier: EPL-2.0
package garboard.session.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WindowPlaceTest {

    private static final WindowPlace SCREEN = new WindowPlace(0, 30, 1400, 870);
    private static final WindowPlace SECOND = new WindowPlace(1400, 0, 1920, 1080);

    @Test
    void staysWhereItWas() {
        var place = new WindowPlace(40, 50, 1200, 800);
        assertThat(place.on(List.of(SCREEN, SECOND))).isEqualTo(place);
        var onSecond = new WindowPlace(1500, 50, 1300, 900);
        assertThat(onSecond.on(List.of(SCREEN, SECOND))).isEqualTo(onSecond);
    }

    @Test
    void comesBackWhenItsScreenIsGone() {
        assertThat(new WindowPlace(1500, 50, 1300, 900).on(List.of(SCREEN))).isEqualTo(new WindowPlace(50, 30, 1300, 870));
    }

    @ParameterizedTest
    @CsvSource({ "0, -400", "0, 899", "-1150, 40", "1390, 40", "2000000000, 2000000000", "-2147483648, -2147483648" })
    void comesBackFromWhereNoHandReachesIt(int x, int y) {
        assertThat(new WindowPlace(x, y, 1200, 800).on(List.of(SCREEN))).isEqualTo(new WindowPlace(100, 65, 1200, 800));
    }

    @Test
    void mayHangOverTheEdgeAsFarAsItCanBeTakenHoldOf() {
        var place = new WindowPlace(-900, 200, 1200, 800);
        assertThat(place.on(List.of(SCREEN))).isEqualTo(place);
    }

    @Test
    void isNeverLargerThanItsScreenNorTooSmallToFind() {
        assertThat(new WindowPlace(0, 30, 5000, 4000).on(List.of(SCREEN))).isEqualTo(SCREEN);
        assertThat(new WindowPlace(10, 40, 0, -5).on(List.of(SCREEN))).isEqualTo(new WindowPlace(10, 40, 320, 320));
        assertThat(new WindowPlace(0, 0, 900, 900).on(List.of(new WindowPlace(0, 0, 200, 150)))).isEqualTo(new WindowPlace(0, 0, 200, 150));
    }

    @Test
    void beginsInTheMiddle() {
        assertThat(WindowPlace.middle(1360, 860, SECOND)).isEqualTo(new WindowPlace(1680, 110, 1360, 860));
        assertThat(WindowPlace.middle(1360, 860, new WindowPlace(0, 0, 1024, 768))).isEqualTo(new WindowPlace(0, 0, 1024, 768));
    }

    @Test
    void isReadAsItIsWritten() {
        var place = new WindowPlace(-40, 50, 1200, 800);
        assertThat(WindowPlace.parse(place.toString())).contains(place);
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "1 2 3", "1 2 3 4 5", "a b c d", "1 2 3 99999999999", "1  2 3 4" })
    void isNothingWhenItIsNoPlace(String text) {
        assertThat(WindowPlace.parse(text)).isEmpty();
    }
}
