// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitSpellingTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        temperature            | \u00b0C        | degC
        temperature            | \u2103         | degC
        temperature            | \u00b0F        | degF
        temperature            | C              | degC
        temperature            | deg C          | degC
        temperature difference | \u00b0F        | degF
        area                   | mm\u00b2       | mm2
        area                   | mm^2           | mm2
        area                   | sq in          | in2
        area                   | MCM            | kcmil
        volume                 | m\u00b3        | m3
        volume                 | l              | L
        volume                 | US gal         | gal
        volume                 | floz           | fl oz
        volume                 | cc             | cm3
        length                 | \u00b5m        | um
        length                 | \u03bcm        | um
        length                 | "              | in
        length                 | '              | ft
        length                 | inches         | in
        length                 | in.            | in
        angle                  | \u00b0         | deg
        resistance             | \u03a9         | ohm
        resistance             | m\u2126        | mohm
        resistance             | \u00b5\u03a9   | uohm
        resistance             | M\u03a9        | Mohm
        resistance             | mOhm           | mohm
        resistance             | MOHM           | Mohm
        resistance per length  | m\u03a9/m      | mohm/m
        resistance per length  | ohm/1000 ft    | ohm/1000ft
        volume flow            | l/min          | L/min
        volume flow            | gpm            | gal/min
        volume flow            | US gpm         | gal/min
        volume flow            | GPH            | gal/h
        volume flow            | cfm            | ft3/min
        volume flow            | CFM            | ft3/min
        rotational speed       | rpm            | r/min
        rotational speed       | RPM            | r/min
        gauge pressure         | PSI            | psi
        gauge pressure         | psig           | psi
        absolute pressure      | psia           | psi
        gauge pressure         | in H\u2082O    | inH2O
        gauge pressure         | inhg           | inHg
        specific heat          | kJ/kgK         | kJ/(kg.K)
        specific heat          | kJ/(kg\u00b7K) | kJ/(kg.K)
        specific heat          | J/(kg K)       | J/(kg.K)
        specific consumption   | lb/hp-h        | lb/(hp.h)
        dynamic viscosity      | mPa\u00b7s     | mPa.s
        kinematic viscosity    | mm\u00b2/s     | mm2/s
        slope                  | m/m            | 1
        slope                  | \u00b0         | deg
        speed                  | kts            | kn
        apparent power         | KVA            | kVA
        charge                 | AH             | Ah
        time span              | hr             | h
        """)
    void readsTheTradesSpellingsAndKeepsThemAsTyped(String kindName, String typed, String symbol) {
        Kind<?> kind = Kind.named(kindName).orElseThrow();

        Quantity<?> quantity = kind.parse("3 " + typed);

        assertThat(quantity.si()).isEqualTo(kind.of(3, symbol).si());
        assertThat(quantity.givenUnit()).isEqualTo(typed);
        assertThat(quantity).hasToString("3 " + typed);
        assertThat(kind.parse(quantity.toString())).isEqualTo(quantity);
    }

    @ParameterizedTest
    @CsvSource({"voltage, mV, 0.001", "voltage, MV, 1e6", "power, mW, 0.001", "power, MW, 1e6", "resistance, mohm, 0.001",
        "resistance, Mohm, 1e6", "frequency, mHz, 0.001"})
    void neverTakesMilliForMega(String kindName, String unit, double si) {
        assertThat(Kind.named(kindName).orElseThrow().of(1, unit).si()).isEqualTo(si);
    }

    @ParameterizedTest
    @CsvSource({"length, MM, mm", "gauge pressure, MBAR, mbar", "gauge pressure, mPa, MPa", "frequency, MHz, mHz", "energy, mJ, MJ"})
    void asksBackWhereOnlyTheCaseOfTheHeadTellsMilliFromMega(String kindName, String typed, String meant) {
        assertThatThrownBy(() -> Kind.named(kindName).orElseThrow().parse("5 " + typed)).isInstanceOf(QuantityFormatException.class)
            .hasMessage(kindName + ": \"5 " + typed + "\" - " + typed + " is not a unit of " + kindName + "; did you mean " + meant + "?");
    }

    @Test
    void namesTheUnitsThatWouldBeRightWhenTheUnitIsOfAnotherKind() {
        assertThatThrownBy(() -> Length.valueOf("19 kg")).isInstanceOf(QuantityFormatException.class)
            .hasMessage("length: \"19 kg\" - kg is not a unit of length; use mm, cm, m, in or ft");
        assertThatThrownBy(() -> Length.of(19, "kg")).isInstanceOf(QuantityFormatException.class)
            .hasMessage("length: kg is not a unit of length; use mm, cm, m, in or ft");
        assertThatThrownBy(() -> Length.of(19).in("kg")).isInstanceOf(QuantityFormatException.class)
            .hasMessage("length: kg is not a unit of length; use mm, cm, m, in or ft");
    }

    @ParameterizedTest
    @CsvSource({"gauge pressure, kpsi, psi", "volume flow, gal/mim, gal/min", "volume flow, L/mni, L/min", "length, fot, ft",
        "volume, gall, gal", "specific consumption, g/kW-h, g/kWh", "rotational speed, rmp, r/min"})
    void asksWhetherTheNextUnitWasMeantAfterOneSlip(String kindName, String typed, String meant) {
        assertThatThrownBy(() -> Kind.named(kindName).orElseThrow().parse("5 " + typed)).isInstanceOf(QuantityFormatException.class)
            .hasMessageEndingWith(typed + " is not a unit of " + kindName + "; did you mean " + meant + "?");
    }

    @ParameterizedTest
    @CsvSource({"length, mm or in", "gauge pressure, kPa or psi", "voltage, V", "temperature, degC or degF", "slope, mm/m or in/ft"})
    void asksForAUnitWhereThereIsNone(String kindName, String examples) {
        assertThatThrownBy(() -> Kind.named(kindName).orElseThrow().parse("12")).isInstanceOf(QuantityFormatException.class)
            .hasMessage(kindName + ": \"12\" - give a unit, for example " + examples);
    }

    @Test
    void asksForAUnitWhereItIsEmpty() {
        assertThatThrownBy(() -> Length.of(12, "")).isInstanceOf(QuantityFormatException.class)
            .hasMessage("length: give a unit, for example mm or in");
    }

    @Test
    void readsABareRatioAsAPureNumber() {
        assertThat(Ratio.valueOf("0.8").si()).isEqualTo(0.8);
        assertThat(Ratio.valueOf("0.8 1")).isEqualTo(Ratio.valueOf("0.8")).isEqualTo(Ratio.of(0.8)).hasToString("0.8");
        assertThat(Ratio.valueOf("80 %").si()).isEqualTo(0.8);
        assertThat(Ratio.valueOf("400 ppm").si()).isEqualTo(0.0004);
    }

    @Test
    void refusesSlopesOfNinetyDegrees() {
        assertThat(Slope.valueOf("89.9 deg").si()).isPositive();
        assertThatThrownBy(() -> Slope.valueOf("90 deg")).isInstanceOf(QuantityFormatException.class)
            .hasMessageContaining("between -89.9 and 89.9");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1 K", "-273.16 degC", "-460 degF"})
    void refusesTemperaturesBelowAbsoluteZero(String text) {
        assertThatThrownBy(() -> Temperature.valueOf(text)).isInstanceOf(QuantityFormatException.class)
            .hasMessageStartingWith("temperature: \"" + text + "\" - ").hasMessageContaining("absolute zero");
    }

    @Test
    void refusesAbsolutePressuresBelowAVacuum() {
        assertThatThrownBy(() -> AbsolutePressure.valueOf("-3 psi")).isInstanceOf(QuantityFormatException.class)
            .hasMessageContaining("a pressure read on a gauge is a gauge pressure");
        assertThatThrownBy(() -> AbsolutePressure.of(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThat(GaugePressure.valueOf("-3 psi").si()).isNegative();
    }
}
