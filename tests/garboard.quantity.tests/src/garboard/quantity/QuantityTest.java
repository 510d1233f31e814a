// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.atomic.AtomicReference;

import org.junit.jupiter.api.Test;

class QuantityTest {

    @Test
    void remembersNumberAndUnitAsGiven() {
        Length bore = Length.valueOf("  1  1/2   in ");

        assertThat(bore.givenNumber()).isEqualTo("1 1/2");
        assertThat(bore.givenUnit()).isEqualTo("in");
        assertThat(bore).hasToString("1 1/2 in");
        assertThat(GaugePressure.valueOf("38.0 psi")).hasToString("38.0 psi");
        assertThat(GaugePressure.of(38, "psi")).hasToString("38 psi").isEqualTo(GaugePressure.valueOf("38 psi"));
    }

    @Test
    void tellsAComputedQuantityInTheSiUnit() {
        assertThat(Length.of(0.154)).hasToString("0.154 m").isEqualTo(Length.valueOf("0.154 m")).hasSameHashCodeAs(Length.valueOf("0.154 m"));
        assertThat(Area.of(1e-7)).hasToString("1e-7 m2");
        assertThat(Power.of(1.5e17)).hasToString("1.5e17 W");
        assertThat(Power.of(-0.0)).hasToString("0 W").isEqualTo(Power.of(0));
    }

    @Test
    void equalsWhatWasGivenAlikeAndNothingElse() {
        assertThat(Length.valueOf("1 in")).isNotEqualTo(Length.valueOf("25.4 mm")).isNotEqualTo(Length.valueOf("1.0 in"))
            .isNotEqualTo(Length.valueOf("1 in ±1 mm")).isNotEqualTo(null).isNotEqualTo("1 in");
        assertThat(Length.of(1)).isEqualTo(Length.of(1)).isNotEqualTo(Length.of(2));
        assertThat((Object) GaugePressure.of(1)).isNotEqualTo(PressureDifference.of(1));
    }

    @Test
    void ordersBySizeWhateverTheUnit() {
        Length inch = Length.valueOf("1 in");
        Length millimetres = Length.valueOf("25 mm");

        assertThat(inch).isGreaterThan(millimetres).isEqualByComparingTo(Length.valueOf("25.4 mm"));
        assertThat(inch.isMoreThan(millimetres)).isTrue();
        assertThat(inch.isLessThan(millimetres)).isFalse();
        assertThat(millimetres.isLessThan(inch)).isTrue();
        assertThat(inch.isMoreThan(Length.valueOf("25.4 mm"))).isFalse();
        assertThat(inch.isLessThan(Length.valueOf("25.4 mm"))).isFalse();
    }

    @Test
    void givesTheVeryNumberBackInTheUnitGiven() {
        assertThat(Temperature.of(12.3, "degF").in("degF")).isEqualTo(12.3);
        assertThat(Temperature.of(12.3, "degF").in("°F")).isEqualTo(12.3);
        assertThat(GaugePressure.valueOf("0.1 inHg").in("inhg")).isEqualTo(0.1);
    }

    @Test
    void givesTheDifferenceOfTwoTemperaturesAsATemperatureDifference() {
        TemperatureDifference rise = Temperature.of(60, "degC").differenceFrom(Temperature.of(86, "degF"));

        assertThat(rise.si()).isCloseTo(30, within(1e-12));
    }

    @Test
    void givesTheDifferenceOfTwoPressuresAsAPressureDifference() {
        PressureDifference gauges = GaugePressure.of(30, "kPa").differenceFrom(GaugePressure.of(-10, "kPa"));
        PressureDifference absolutes = AbsolutePressure.of(90, "kPa").differenceFrom(AbsolutePressure.of(100, "kPa"));

        assertThat(gauges.si()).isEqualTo(40_000);
        assertThat(absolutes.si()).isEqualTo(-10_000);
    }

    @Test
    void givesAllOtherDifferencesInTheSameKind() {
        Quantity<?> difference = Length.of(2).differenceFrom(Length.of(0.5));

        assertThat(difference).isEqualTo(Length.of(1.5));
        assertThat(Kind.all()).filteredOn(kind -> differenceType(kind) != kind.type()).extracting(Kind::name)
            .containsExactlyInAnyOrder("temperature", "gauge pressure", "absolute pressure");
    }

    @Test
    void keepsTheSiNumberNextToTheDecimal() {
        assertThat(Length.valueOf("38 mm").si()).isEqualTo(0.038);
        assertThat(Length.of(0.038).in("mm")).isEqualTo(38);
        assertThat(Area.valueOf("35 mm2").si()).isEqualTo(35e-6);
        assertThat(Temperature.valueOf("12 degC").si()).isEqualTo(285.15);
        assertThat(Temperature.of(285.15).in("degC")).isEqualTo(12);
    }

    /** In OSGi, and in a pool, a thread's class loader may not see the units library. */
    @Test
    void worksInAThreadWhoseClassLoaderKnowsNothing() throws InterruptedException {
        AtomicReference<Object> result = new AtomicReference<>();
        Thread thread = new Thread(() -> result.set(Length.valueOf("3/4 in").in("mm")));
        thread.setContextClassLoader(ClassLoader.getPlatformClassLoader());
        thread.start();
        thread.join();

        assertThat(result.get()).isEqualTo(19.05);
    }

    private static <Q extends Quantity<Q>> Class<?> differenceType(Kind<Q> kind) {
        return kind.of(2).differenceFrom(kind.of(1)).getClass();
    }
}
