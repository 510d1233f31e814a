// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Current;
import garboard.quantity.Voltage;

class StarterBatteryTest {

    private static StarterBattery battery(String coldCranking) {
        return new StarterBattery(Voltage.valueOf("12.7 V"), Current.valueOf(coldCranking));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # CCA | milliohm | source
            700 A | 7.86 | straight line to 7.2 V (SAE J537 end point), recomputed independently
            500 A | 11.0 | straight line to 7.2 V (SAE J537 end point), recomputed independently
            """)
    void takesItsResistanceFromTheColdCrankingTest(String coldCranking, String milliohm, String source) {
        assertPrinted(milliohm, battery(coldCranking).internalResistance().si() * 1000);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # CCA | cranking | blocks | posts
            700 A | 300 A | 1 | 10.34 | straight line to 7.2 V (SAE J537 end point), recomputed independently
            500 A | 300 A | 1 | 9.40  | straight line to 7.2 V (SAE J537 end point), recomputed independently
            700 A | 250 A | 2 | 21.47 | straight line to 7.2 V (SAE J537 end point), recomputed independently
            700 A | 700 A | 1 | 7.2   | SAE J537: the test ends at 7.2 V
            """)
    void sagsWhileItCranks(String coldCranking, String cranking, int blocks, String posts, String source) {
        assertPrinted(posts, battery(coldCranking).atPosts(Current.valueOf(cranking), blocks).si());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            300 A | 532 | straight line to 7.2 V, floor 9.6 V, recomputed independently
            250 A | 444 | straight line to 7.2 V, floor 9.6 V, recomputed independently
            1 A   | 1.774 | the factor itself, recomputed independently
            """)
    void asksForAColdCrankingCurrent(String cranking, String needed, String source) {
        CrankingDemand demand = CrankingDemand.of(Current.valueOf(cranking), Voltage.valueOf("12.7 V"));
        assertPrinted(needed, demand.coldCrankingNeeded().si());
    }

    @Test
    void neededBatteryHoldsExactlyTheFloor() {
        CrankingDemand demand = CrankingDemand.of(Current.valueOf("280 A"), Voltage.valueOf("12.7 V")).withFloor(Voltage.valueOf("9.2 V"));
        StarterBattery least = new StarterBattery(Voltage.valueOf("12.7 V"), demand.coldCrankingNeeded());
        assertThat(least.atPosts(Current.valueOf("280 A"), 1).si()).isCloseTo(9.2, within(1e-9));
    }

    @Test
    void doesNotFollowTheLineBeyondItsEnd() {
        assertThatThrownBy(() -> battery("300 A").atPosts(Current.valueOf("301 A"), 1)).isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("cold-cranking");
        assertThatThrownBy(() -> battery("0 A")).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new StarterBattery(Voltage.valueOf("25.4 V"), Current.valueOf("700 A"))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> CrankingDemand.of(Current.valueOf("300 A"), Voltage.valueOf("9.5 V"))).isInstanceOf(OutOfRangeException.class);
    }
}
