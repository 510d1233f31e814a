// SPDX-License-Identifier: EPL-2.0
package garboard.session.calculators;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;

import garboard.model.Labels;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Calculations;
import garboard.quantity.UnitSystem;
import garboard.session.entry.EntryReader;
import garboard.session.entry.Reading;

class CalculatorTest {

    private static final EntryReader SI = new EntryReader(UnitSystem.SI, Labels.in(Locale.ENGLISH), Clock.systemUTC());
    private static final EntryReader US = new EntryReader(UnitSystem.US, Labels.in(Locale.ENGLISH), Clock.systemUTC());

    private final Calculators calculators = new Calculators();

    private Calculator open(String name) {
        return calculators.open(calculators.list().find(name).orElseThrow());
    }

    private static CalculatorInput input(Calculator calculator, String name) {
        return calculator.inputs().stream().filter(input -> input.name().equals(name)).findFirst().orElseThrow();
    }

    private static void type(Calculator calculator, String name, String text) {
        calculator.type(input(calculator, name), text);
    }

    private static Calculator heeled() {
        var calculator = new Calculators();
        return calculator.open(calculator.list().find("heeled-height").orElseThrow());
    }

    @Test
    void answersAsSoonAsNothingIsMissing() {
        Calculator calculator = heeled();
        assertThat(calculator.answer(SI)).isInstanceOfSatisfying(Answering.Waiting.class,
            waiting -> assertThat(waiting.needed()).extracting(CalculatorInput::title).containsExactly("Height", "Heel"));
        type(calculator, "height", "450 mm");
        type(calculator, "starboard", "1 m");
        type(calculator, "heel", "30 deg");
        // 450 mm cos 30 deg - 1000 mm sin 30 deg = 389.7 mm - 500 mm, worked out by hand
        assertThat(calculator.answer(SI)).isInstanceOfSatisfying(Answering.Answered.class, answered -> {
            Answering.Line height = answered.lines().getFirst();
            assertThat(height.shown().getFirst()).isEqualTo("-110 mm");
            assertThat(height.quantity().orElseThrow().toString()).isEqualTo("-110 mm");
        });
    }

    @Test
    void showsThePreferredUnitsFirst() {
        Calculator calculator = heeled();
        type(calculator, "height", "1 m");
        type(calculator, "heel", "0 deg");
        var answered = (Answering.Answered) calculator.answer(US);
        assertThat(answered.lines().getFirst().shown()).containsExactly("39.4 in", "1 m");
        assertThat(answered.lines().getFirst().quantity().orElseThrow().toString()).isEqualTo("39.4 in");
    }

    @Test
    void takesABareNumberInTheUnitOfTheDefaultElseTheCustomaryOne() {
        Calculator calculator = heeled();
        assertThat(input(calculator, "forward").unit(UnitSystem.SI)).contains("m");
        assertThat(input(calculator, "sinkage").unit(UnitSystem.SI)).contains("mm");
        assertThat(input(calculator, "forward").unit(UnitSystem.US)).contains("in");
        type(calculator, "height", "0");
        type(calculator, "forward", "2");
        type(calculator, "heel", "0");
        type(calculator, "trim", "30");
        // 2 m sin 30 deg = 1 m, but for the last bit of a double, so that it is shown in mm
        assertThat(((Answering.Answered) calculator.answer(SI)).lines().getFirst().shown().getFirst()).isEqualTo("1000 mm");
    }

    @Test
    void namesTheInputThatCannotBeRead() {
        Calculator calculator = heeled();
        type(calculator, "height", "450 psi");
        type(calculator, "heel", "30 d");
        assertThat(calculator.answer(SI)).isInstanceOfSatisfying(Answering.Unread.class,
            unread -> assertThat(unread.inputs()).extracting(CalculatorInput::name).containsExactly("height", "heel"));
        assertThat(input(calculator, "height").read("450 psi", SI)).isInstanceOf(Reading.Refused.class);
        assertThat(input(calculator, "heel").read("30 d", SI)).isInstanceOf(Reading.Begun.class);
    }

    @Test
    void namesTheInputThatIsOutOfItsRange() {
        Calculator calculator = heeled();
        type(calculator, "height", "450 mm");
        type(calculator, "heel", "120 deg");
        assertThat(calculator.answer(SI)).isInstanceOfSatisfying(Answering.Refused.class, refused -> {
            assertThat(refused.input()).hasValueSatisfying(input -> assertThat(input.name()).isEqualTo("heel"));
            assertThat(refused.why()).contains("heel");
        });
    }

    @Test
    void tellsACountThatIsNoneByTheInput() {
        Calculator calculator = open("clearance-curve");
        type(calculator, "height", "450 mm");
        type(calculator, "heel", "30 deg");
        type(calculator, "steps", "a few");
        assertThat(calculator.answer(SI)).isInstanceOfSatisfying(Answering.Refused.class,
            refused -> assertThat(refused.input()).hasValueSatisfying(input -> assertThat(input.name()).isEqualTo("steps")));
    }

    @Test
    void offersTheWordsToChooseFrom() {
        List<CalculatorInput> choosing = calculators.list().entries().stream().map(calculators::open).flatMap(one -> one.inputs().stream())
            .filter(input -> !input.choices().isEmpty()).toList();
        assertThat(choosing).isNotEmpty().allSatisfy(input -> {
            assertThat(input.kind()).isEmpty();
            assertThat(input.choices()).hasSizeGreaterThan(1).doesNotContain("");
        });
    }

    @Test
    void remembersWhatWasTypedLast() {
        type(open("heeled-height"), "heel", "30 deg");
        open("lowest-height");
        Calculator again = open("heeled-height");
        assertThat(again.text(input(again, "heel"))).isEqualTo("30 deg");
        assertThat(calculators.last()).hasValueSatisfying(entry -> assertThat(entry.calculation().name()).isEqualTo("heeled-height"));
        again.clear();
        assertThat(again.text(input(again, "heel"))).isEmpty();
    }

    @Test
    void listsEveryCalculationOnceUnderASubject() {
        assertThat(calculators.list().entries()).extracting(entry -> entry.calculation().name())
            .containsExactlyElementsOf(Calculations.all().stream().map(Calculation::name).toList());
    }

    @Test
    void findsByEveryWordThoseWithTheWordsInTheirTitleFirst() {
        List<CalculatorList.Entry> found = calculators.list().matching("HEIGHT heel", Subject::name);
        assertThat(found).isNotEmpty();
        assertThat(found.getFirst().calculation().title().toLowerCase(Locale.ROOT)).contains("height", "heel");
        assertThat(calculators.list().matching("  ", Subject::name)).hasSameSizeAs(calculators.list().entries());
        assertThat(calculators.list().matching("no-such-thing-at-all", Subject::name)).isEmpty();
    }

    @Test
    void findsBySubjectAsThePersonCallsIt() {
        assertThat(calculators.list().matching("leitungen", subject -> subject == Subject.CABLE ? "Leitungen" : "anderes"))
            .isNotEmpty().allMatch(entry -> entry.subject() == Subject.CABLE);
    }
}
