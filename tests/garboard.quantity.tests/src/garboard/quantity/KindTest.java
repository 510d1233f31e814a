// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class KindTest {

    static List<Kind<?>> kinds() {
        return Kind.all();
    }

    // The SI units: BIPM, The International System of Units, 9th edition, tables 2 to 6 (from memory); ASCII spelling is ours.
    @ParameterizedTest
    @CsvSource({"Length, m", "Area, m2", "Volume, m3", "Mass, kg", "Force, N", "Angle, rad", "Slope, 1", "Speed, m/s", "TimeSpan, s",
        "Frequency, Hz", "RotationalSpeed, rad/s", "AbsolutePressure, Pa", "GaugePressure, Pa", "PressureDifference, Pa", "Temperature, K",
        "TemperatureDifference, K", "VolumeFlow, m3/s", "MassFlow, kg/s", "Density, kg/m3", "KinematicViscosity, m2/s",
        "DynamicViscosity, Pa.s", "Power, W", "ApparentPower, VA", "ReactivePower, var", "Energy, J", "Voltage, V", "Current, A",
        "Resistance, ohm", "ResistancePerLength, ohm/m", "Charge, C", "SpecificConsumption, kg/J", "HeatingValue, J/kg",
        "SpecificHeat, J/(kg.K)", "Ratio, 1"})
    void tellsTheSiUnitOfEachClass(String className, String siUnit) throws ClassNotFoundException {
        Kind<?> kind = Kind.ofType(Class.forName("garboard.quantity." + className)).orElseThrow();

        assertThat(kind.siUnit()).isEqualTo(siUnit);
        assertThat(kind.of(3, siUnit).si()).isEqualTo(3);
        assertThat(kind.of(3).kind()).isSameAs(kind);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void acceptsItsSiUnitAndBothCustomaryUnits(Kind<?> kind) {
        assertThat(kind.units()).contains(kind.siUnit(), kind.displayUnit(UnitSystem.SI), kind.displayUnit(UnitSystem.US));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void declaresEachUnitOnceAndInAscii(Kind<?> kind) {
        assertThat(kind.units()).doesNotHaveDuplicates().allMatch(unit -> unit.matches("[ -~]+"));
        assertThat(kind.units()).allMatch(kind::accepts);
        assertThat(kind.units().stream().filter(unit -> !unit.startsWith("M")).map(unit -> unit.toLowerCase(Locale.ROOT)))
            .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void isFoundByClassAndByName(Kind<?> kind) {
        assertThat(Kind.ofType(kind.type())).containsSame(kind);
        assertThat(Kind.named(kind.name())).containsSame(kind);
        assertThat(kind).hasToString(kind.name());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void offersTheSameFactoriesOnEveryClass(Kind<?> kind) throws NoSuchMethodException {
        assertThat(kind.type().getMethod("valueOf", String.class).getReturnType()).isEqualTo(kind.type());
        assertThat(kind.type().getMethod("of", double.class).getReturnType()).isEqualTo(kind.type());
        assertThat(kind.type().getMethod("of", double.class, String.class).getReturnType()).isEqualTo(kind.type());
        assertThat(Modifier.isFinal(kind.type().getModifiers())).isTrue();
        assertThat(kind.type().getConstructors()).isEmpty();
    }

    @Test
    void findsAKindByItsClass() {
        assertThat(Kind.of(Length.class).parse("3/4 in")).isEqualTo(Length.valueOf("3/4 in"));
        assertThat(Kind.of(Length.class).type()).isEqualTo(Length.class);
        assertThat(Kind.ofType(String.class)).isEmpty();
        assertThat(Kind.named("luck")).isEmpty();
    }

    @Test
    void refusesToDeclareASpellingForTwoUnits() {
        UnitTable.Declaration declared = UnitTable.of("length", "m", TradeUnits.METRE).unit("m", TradeUnits.METRE)
            .unit("in", TradeUnits.INCH, "inch").unit("ft", TradeUnits.FOOT, "Inch");

        assertThatThrownBy(() -> declared.shownIn("m", "in")).isInstanceOf(IllegalArgumentException.class)
            .hasMessage("length: Inch is declared twice");
        assertThatThrownBy(() -> declared.unit("in", TradeUnits.INCH)).isInstanceOf(IllegalArgumentException.class)
            .hasMessage("length: in is declared twice");
    }

    @Test
    void refusesToDeclareAUnitThatMeasuresSomethingElse() {
        UnitTable.Declaration declared = UnitTable.of("length", "m", TradeUnits.METRE);

        assertThatThrownBy(() -> declared.unit("kg", TradeUnits.KILOGRAM)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void listsEveryClassOfQuantities() {
        assertThat(Kind.all()).hasSize(34).doesNotHaveDuplicates();
        assertThat(Kind.all()).extracting(Kind::name).doesNotHaveDuplicates();
    }
}
