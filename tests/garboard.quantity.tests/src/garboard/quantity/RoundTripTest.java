// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.Tuple.Tuple2;

class RoundTripTest {

    private static final double LARGEST = 1e12;

    @Property
    void aComputedQuantityReadsBackEqualAndToTheLastBit(@ForAll("kinds") Kind<?> kind, @ForAll("numbers") double number) {
        Quantity<?> quantity = kind.of(fit(kind, number));

        Quantity<?> back = kind.parse(quantity.toString());

        assertThat(back).isEqualTo(quantity).hasSameHashCodeAs(quantity);
        assertThat(back.si()).isEqualTo(quantity.si());
    }

    @Property
    void aQuantityInAnyUnitReadsBackEqualAndToTheLastBit(@ForAll("units") Tuple2<Kind<?>, String> unit, @ForAll("numbers") double number) {
        Quantity<?> quantity = unit.get1().of(fit(unit.get1(), number), unit.get2());

        Quantity<?> back = unit.get1().parse(quantity.toString());

        assertThat(back).isEqualTo(quantity).hasSameHashCodeAs(quantity);
        assertThat(back.si()).isEqualTo(quantity.si());
    }

    @Property
    void aTypedTextReadsBackEqualAndToTheLastBit(@ForAll("units") Tuple2<Kind<?>, String> unit, @ForAll("typedNumbers") String number,
        @ForAll("accuracies") String accuracy) {
        Quantity<?> quantity = unit.get1().parse(number + " " + unit.get2() + accuracy);

        Quantity<?> back = unit.get1().parse(quantity.toString());

        assertThat(quantity.givenNumber()).isEqualTo(number);
        assertThat(back).isEqualTo(quantity).hasToString(quantity.toString());
        assertThat(back.si()).isEqualTo(quantity.si());
        assertThat(back.accuracySi()).isEqualTo(quantity.accuracySi());
    }

    @Property
    void theUnitGivenGivesTheNumberGiven(@ForAll("units") Tuple2<Kind<?>, String> unit, @ForAll("numbers") double number) {
        double given = fit(unit.get1(), number);

        assertThat(unit.get1().of(given, unit.get2()).in(unit.get2())).isEqualTo(given);
    }

    @Property
    void conversionToSiAndBackIsTheSameNumber(@ForAll("units") Tuple2<Kind<?>, String> unit, @ForAll("moderateNumbers") double number) {
        double given = fit(unit.get1(), number);
        double si = unit.get1().of(given, unit.get2()).si();

        double back = unit.get1().of(si).in(unit.get2());

        assertThat(back).isCloseTo(given, within(1e-11 + 1e-12 * Math.abs(given)));
    }

    @Property
    void conversionKeepsTheOrder(@ForAll("units") Tuple2<Kind<?>, String> unit, @ForAll("moderateNumbers") double one,
        @ForAll("moderateNumbers") double other) {
        double smaller = fit(unit.get1(), Math.min(one, other));
        double larger = fit(unit.get1(), Math.max(one, other));
        Assume.that(smaller <= larger); // fitting may swap them

        assertThat(unit.get1().of(smaller, unit.get2()).si()).isLessThanOrEqualTo(unit.get1().of(larger, unit.get2()).si());
    }

    @Property
    void anyTextIsReadOrRefusedWithASentence(@ForAll("kinds") Kind<?> kind, @ForAll("scribbles") String text) {
        try {
            Quantity<?> quantity = kind.parse(text);
            assertThat(kind.parse(quantity.toString())).isEqualTo(quantity);
        } catch (QuantityFormatException refused) {
            assertThat(refused.getMessage()).startsWith(kind.name() + ": ");
        }
    }

    @Property
    void displayedTextIsWithinTheRoundingOfThreeDigits(@ForAll("kinds") Kind<?> kind, @ForAll("moderateNumbers") double number,
        @ForAll UnitSystem system) {
        Quantity<?> quantity = kind.of(fit(kind, number));

        String[] shown = Display.of(system).format(quantity).split(" ", 2);

        double exact = quantity.in(shown[1]);
        assertThat(Double.parseDouble(shown[0])).isCloseTo(exact, within(0.005 * Math.abs(exact) + Double.MIN_NORMAL));
    }

    @Provide
    Arbitrary<Kind<?>> kinds() {
        return Arbitraries.of(Kind.all());
    }

    @Provide
    Arbitrary<Tuple2<Kind<?>, String>> units() {
        return Arbitraries.of(Kind.all()).flatMap(kind -> Arbitraries.of(kind.units()).map(unit -> Tuple.of(kind, unit)));
    }

    @Provide
    Arbitrary<Double> numbers() {
        return Arbitraries.oneOf(Arbitraries.doubles().between(-LARGEST, LARGEST).ofScale(15),
            Arbitraries.doubles().between(-1e-9, 1e-9).ofScale(25), moderateNumbers());
    }

    @Provide
    Arbitrary<Double> moderateNumbers() {
        return Arbitraries.doubles().between(-1000, 1000).ofScale(6);
    }

    @Provide
    Arbitrary<String> typedNumbers() {
        Arbitrary<Integer> digits = Arbitraries.integers().between(1, 80);
        return Arbitraries.oneOf(
            digits.map(String::valueOf),
            Combinators.combine(digits, digits).as((a, b) -> a + "." + b),
            Combinators.combine(digits, digits).as((a, b) -> a + "," + b),
            Combinators.combine(digits, digits).as((a, b) -> a + "/" + b),
            Combinators.combine(digits, Arbitraries.integers().between(1, 7)).as((a, b) -> a + " " + b + "/8"),
            digits.map(a -> a + "e-3"),
            digits.map(a -> "+" + a + ".0"));
    }

    @Provide
    Arbitrary<String> accuracies() {
        return Arbitraries.of("", " ±2 %", " +/- 0,5 %", "+-1/2%");
    }

    @Provide
    Arbitrary<String> scribbles() {
        return Arbitraries.strings().withChars("0123456789.,/-+±%e \u2212'\"°²µΩmMkKgLlinftpsaAVWhHzCFrd()").ofMaxLength(14);
    }

    /** Brings the number into the range of kinds that have one: no temperature below 0 K, no slope of 90 degrees. */
    private static double fit(Kind<?> kind, double number) {
        boolean bounded = kind.type() == Temperature.class || kind.type() == AbsolutePressure.class;
        boolean slope = kind.type() == Slope.class;
        return bounded ? Math.abs(number) : slope ? number % 80 : number;
    }
}
