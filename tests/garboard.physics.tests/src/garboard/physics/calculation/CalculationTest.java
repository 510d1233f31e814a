// SPDX-License-Identifier: EPL-2.0
package garboard.physics.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;

import garboard.physics.OutOfRangeException;
import garboard.physics.Source;
import garboard.physics.Status;
import garboard.quantity.Length;

class CalculationTest {

    private enum Side {
        PORT_SIDE, STARBOARD_SIDE
    }

    private static final Parameter<Length> BORE = Parameter.of("bore", Length.class, "inside diameter");
    private static final Parameter<Length> LENGTH = Parameter.of("length", Length.class, "length of the hose").orElse("2 m");
    private static final Parameter<Integer> BENDS = Parameter.wholeNumber("bends", "number of bends").orElse("0");
    private static final Parameter<Side> SIDE = Parameter.choice("side", Side.class, "which side").orElse("port-side");
    private static final Parameter<Optional<Length>> SAG = Parameter.of("sag", Length.class, "depth of a sag").optional();
    private static final Parameter<String> GAUGE = Parameter.oneOf("gauge", List.of("8 AWG", "6 AWG"), "wire gauge").orElse("8 AWG");

    private static final Calculation SAMPLE = Calculation.named("sample", "Sample").explained("For this test.")
        .takes(BORE, LENGTH, BENDS, SIDE, SAG, GAUGE).by("-").validFor("-").from(Source.commonPractice())
        .answers(in -> {
            if (in.get(BORE).si() <= 0) {
                throw OutOfRangeException.of("bore", in.get(BORE), "more than 0");
            }
            return Answer.of("length in bores", Length.of(in.get(LENGTH).si() / in.get(BORE).si()), "m").and("side", in.get(SIDE).name())
                .and("bends", in.get(BENDS).toString()).and("sag", in.get(SAG).map(Length::toString).orElse("none"))
                .and("gauge", in.get(GAUGE)).warningIf(in.get(BENDS) > 2, "Many bends.");
        });

    @Test
    void takesDefaultsAndReadsText() throws CalculationException {
        Answer answer = SAMPLE.evaluate(Map.of("bore", "50 mm"));
        assertThat(answer.results()).containsExactly(new Answer.Figure("length in bores", Length.of(40), List.of("m")),
            new Answer.Words("side", "PORT_SIDE"), new Answer.Words("bends", "0"), new Answer.Words("sag", "none"),
            new Answer.Words("gauge", "8 AWG"));
        assertThat(answer.warnings()).isEmpty();
        Answer other = SAMPLE.evaluate(Map.of("bore", "2 in", "bends", "3", "side", "Starboard side", "sag", "10 mm", "gauge", "6 awg"));
        assertThat(other.results().subList(1, 5)).containsExactly(new Answer.Words("side", "STARBOARD_SIDE"), new Answer.Words("bends", "3"),
            new Answer.Words("sag", "10 mm"), new Answer.Words("gauge", "6 AWG"));
        assertThat(other.warnings()).containsExactly("Many bends.");
    }

    @Test
    void namesTheArgumentThatIsAtFault() {
        assertFault(Map.of(), "bore", "bore is missing: inside diameter (length)");
        assertFault(Map.of("bore", "50 mm", "slope", "1"), "slope", "sample takes no slope; it takes bore, length, bends, side, sag, gauge");
        assertFault(Map.of("bore", "50 kg"), "bore", "bore: ");
        assertFault(Map.of("bore", "50 mm", "bends", "1.5"), "bends", "bends: \"1.5\" is not a whole number");
        assertFault(Map.of("bore", "50 mm", "side", "top"), "side", "side: \"top\" is not one of port-side | starboard-side");
        assertFault(Map.of("bore", "50 mm", "gauge", "7 AWG"), "gauge", "gauge: \"7 AWG\" is not one of 8 AWG | 6 AWG");
        assertFault(Map.of("bore", "0 mm"), "bore", "bore is 0 mm, but has to be more than 0");
    }

    @Test
    void tellsWhatItTakes() {
        assertThat(BORE.accepts()).isEqualTo("length");
        assertThat(SIDE.accepts()).isEqualTo("port-side | starboard-side");
        assertThat(BENDS.accepts()).isEqualTo("whole number");
        assertThat(BORE.mayBeLeftOut()).isFalse();
        assertThat(SAG.mayBeLeftOut()).isTrue();
        assertThat(LENGTH.defaultText()).contains("2 m");
        assertThat(SAG.defaultText()).isEmpty();
    }

    @Test
    void isNotMadeIncomplete() {
        assertThatThrownBy(() -> Calculation.named("bare", "Bare").takes(BORE).answers(in -> Answer.of("x", "y")))
            .isInstanceOf(IllegalStateException.class).hasMessageContaining("bare");
        assertThatThrownBy(() -> Calculation.named("twice", "Twice").explained("-").takes(BORE, BORE).by("-").validFor("-")
            .from(Source.commonPractice()).answers(in -> Answer.of("x", "y"))).isInstanceOf(IllegalStateException.class).hasMessageContaining("name");
        Calculation stray = Calculation.named("stray", "Stray").explained("-").takes(BORE).by("-").validFor("-").from(Source.commonPractice())
            .answers(in -> Answer.of("x", in.get(GAUGE)));
        assertThatThrownBy(() -> stray.evaluate(Map.of("bore", "1 m"))).isInstanceOf(IllegalStateException.class).hasMessageContaining("gauge");
    }

    @Test
    void wordsSourcesForAReader() {
        assertThat(Source.retrieved("33 CFR 183.610")).hasToString("33 CFR 183.610 (text read)");
        assertThat(Source.commonPractice().noting("others use 45 s")).hasToString("common practice; others use 45 s");
        assertThat(Source.derived("continuity").status()).isEqualTo(Status.DERIVED);
        assertThatThrownBy(() -> Source.quoted(" ")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void everyPublishedCalculationIsWellFormed() {
        Set<String> names = new HashSet<>();
        for (Calculation calculation : Calculations.all()) {
            assertThat(calculation.name()).matches("[a-z0-9]+(-[a-z0-9]+)*");
            assertThat(names.add(calculation.name())).as(calculation.name() + " is there once").isTrue();
            assertThat(Calculations.find(calculation.name()).orElseThrow().title()).isEqualTo(calculation.title());
            assertThat(calculation.title()).as(calculation.name()).isNotBlank().doesNotEndWith(".");
            assertThat(calculation.explanation()).as(calculation.name()).endsWith(".");
            assertThat(calculation.source().citation()).isNotBlank();
            for (Parameter<?> parameter : calculation.parameters()) {
                assertThat(parameter.name()).as(calculation.name()).matches("[a-z0-9]+(-[a-z0-9]+)*");
                assertThat(parameter.meaning()).as(parameter.name()).isNotBlank();
                // a default that does not read is a fault of ours
                parameter.defaultText().ifPresent(text -> assertThatReads(parameter));
            }
        }
        assertThat(Calculations.find("no-such-thing")).isEmpty();
    }

    private static void assertThatReads(Parameter<?> parameter) {
        try {
            assertThat(parameter.read(Optional.empty())).isNotNull();
        } catch (CalculationException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static void assertFault(Map<String, String> arguments, String argument, String message) {
        assertThatThrownBy(() -> SAMPLE.evaluate(arguments)).isInstanceOfSatisfying(CalculationException.class,
            fault -> assertThat(fault.argument()).isEqualTo(argument)).hasMessageStartingWith(message);
    }
}
