// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rating;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Power;
import garboard.quantity.TimeSpan;

class AveragePowerTest {

    private static AveragePower.Spell spell(String power, String duration) {
        return new AveragePower.Spell(Power.valueOf(power), TimeSpan.valueOf(duration));
    }

    @Test
    void countsLowPowerAsThirtyPerCent() {
        // ISO 8528-1 form (floor from memory), recomputed independently: 4 h at 12, 2 h at 18, 6 h at 5 kW on a 20 kW set
        List<AveragePower.Spell> day = List.of(spell("12 kW", "4 h"), spell("18 kW", "2 h"), spell("5 kW", "6 h"));
        assertPrinted("9.5", AveragePower.plain(day).in("kW"));
        assertPrinted("10.0", AveragePower.withFloor(day, Power.valueOf("20 kW")).in("kW"));
        assertPrinted("14.0", RatingCategory.PRP.highestAverage(Power.valueOf("20 kW")).in("kW"));
    }

    @Test
    void refusesMoreThanADayAndLessThanASpell() {
        assertThatThrownBy(() -> AveragePower.plain(List.of(spell("1 kW", "20 h"), spell("1 kW", "5 h")))).isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("24 h");
        assertThatThrownBy(() -> AveragePower.plain(List.of())).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> spell("1 kW", "0 h")).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            COP |     | 100 | ISO 8528-1:2018, quoted by a third party
            PRP |     | 70  | ISO 8528-1:2018, quoted by a third party
            LTP | 500 | 100 | ISO 8528-1:2018, quoted by a third party
            ESP | 200 | 70  | ISO 8528-1:2018, quoted by a third party
            """)
    void knowsTheCategories(RatingCategory category, String hours, String average, String source) {
        assertPrinted(average, category.averageShare().in("%"));
        if (hours == null) {
            assertThat(category.hoursAYear()).isEmpty();
        } else {
            assertPrinted(hours, category.hoursAYear().orElseThrow().in("h"));
        }
    }

    @Test
    void overloadsPrimePowerOnly() {
        // ISO 8528-1:2018, quoted by a third party: 110 % for 1 h in 12 h where declared
        assertPrinted("22", RatingCategory.PRP.declaredOverload(Power.valueOf("20 kW")).orElseThrow().in("kW"));
        assertThat(RatingCategory.ESP.declaredOverload(Power.valueOf("20 kW"))).isEmpty();
        assertThat(RatingCategory.LTP.declaredOverload(Power.valueOf("20 kW"))).isEmpty();
        assertThat(RatingCategory.COP.declaredOverload(Power.valueOf("20 kW"))).isEmpty();
    }
}
