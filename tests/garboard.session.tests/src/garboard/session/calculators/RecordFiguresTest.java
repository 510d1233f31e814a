// SPDX-License-Identifier: EPL-2.0
package garboard.session.calculators;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import garboard.checks.Catalogue;
import garboard.examples.Examples;
import garboard.model.Labels;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.quantity.UnitSystem;
import garboard.session.OpenRecord;
import garboard.session.entry.EntryReader;
import garboard.session.entry.Reading;

class RecordFiguresTest {

    private static final Labels LABELS = Labels.in(Locale.ENGLISH);
    private static final EntryReader READER = new EntryReader(UnitSystem.SI, LABELS, Clock.systemUTC());

    private final OpenRecord open = OpenRecord.of(yacht(), Optional.empty(), Catalogue.of(List.of()), Clock.systemUTC());
    private final RecordFigures figures = new RecordFigures(open, LABELS);
    private final Calculators calculators = new Calculators();

    private static RecordFile yacht() {
        try (InputStream in = Examples.find("sailing-yacht").orElseThrow().open()) {
            return RecordFile.read(in, "yacht");
        } catch (IOException | RecordReadException broken) {
            throw new IllegalStateException(broken);
        }
    }

    private Calculator calculator(String name) {
        return calculators.open(calculators.list().find(name).orElseThrow());
    }

    private List<String> keysToTake(String calculation, String input) {
        Calculator calculator = calculator(calculation);
        return figures.toTake(calculator, input(calculator, input)).stream().map(figure -> figure.field().key()).toList();
    }

    private static CalculatorInput input(Calculator calculator, String name) {
        return calculator.inputs().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void offersTheHeelToDesignForWhereAHeelIsWanted() {
        assertThat(keysToTake("lowest-height", "heel")).first().isEqualTo("vessel.designHeel");
        assertThat(keysToTake("lowest-height", "trim")).first().isEqualTo("vessel.designTrim");
    }

    @Test
    void offersOnlyFieldsOfTheSameKindWithAValue() {
        Calculator calculator = calculator("lowest-height");
        assertThat(figures.toTake(calculator, input(calculator, "heel"))).isNotEmpty().allSatisfy(figure -> {
            assertThat(figure.field().value()).isPresent();
            assertThat(figure.field().attribute().getEAttributeType().getInstanceClass()).isEqualTo(Angle.class);
            assertThat(READER.read(figure.field().attribute(), figure.text())).isInstanceOf(Reading.Entered.class);
        });
    }

    @Test
    void takesTheTextAsItWasGiven() {
        Calculator calculator = calculator("lowest-height");
        RecordFigures.Figure heel = figures.toTake(calculator, input(calculator, "heel")).getFirst();
        // The record has designHeel="30 deg".
        assertThat(heel.text()).isEqualTo("30 deg");
        assertThat(heel.words()).contains("Vessel");
    }

    @Test
    void takesWordsAndCountsWhereTheyFit() {
        Calculator drop = calculators.list().entries().stream().map(calculators::open)
            .filter(one -> one.inputs().stream().anyMatch(input -> input.choices().contains("4 AWG"))).findFirst().orElseThrow();
        CalculatorInput size = drop.inputs().stream().filter(input -> input.choices().contains("4 AWG")).findFirst().orElseThrow();
        assertThat(figures.toTake(drop, size)).allSatisfy(figure -> assertThat(size.choices()).contains(figure.text()));
        Calculator curve = calculator("clearance-curve");
        assertThat(figures.toTake(curve, input(curve, "steps"))).isNotEmpty()
            .allSatisfy(figure -> assertThat(figure.text()).matches("-?[0-9]+"));
    }

    @Test
    void putsAResultIntoAFieldInOneStep() {
        Calculator calculator = calculator("height-to-build");
        calculator.type(input(calculator, "margin"), "300 mm");
        calculator.type(input(calculator, "heel"), "0 deg");
        Answering.Line line = ((Answering.Answered) calculator.answer(READER)).lines().getFirst();
        List<RecordFigures.Figure> places = figures.toPut(calculator, line);
        assertThat(places).allMatch(figure -> figure.field().attribute().getEAttributeType().getInstanceClass() == Length.class);
        var seat = places.stream().filter(figure -> figure.field().key().equals("rawWater.siphonBreak.ventSeat.z")).findFirst().orElseThrow();
        Object before = seat.field().value().orElseThrow();
        figures.put(line, seat.field(), "Put");
        assertThat(seat.field().value()).contains(Length.valueOf("300 mm"));
        assertThat(open.edits().undoLabel()).contains("Put");
        open.edits().undo();
        assertThat(seat.field().value()).contains(before);
    }

    @Test
    void offersFieldsOfPartsThatDoNotExistYet() {
        OpenRecord empty = OpenRecord.of(RecordFile.create(), Optional.empty(), Catalogue.of(List.of()), Clock.systemUTC());
        Calculator calculator = calculator("height-to-build");
        calculator.type(input(calculator, "margin"), "300 mm");
        calculator.type(input(calculator, "heel"), "0 deg");
        Answering.Line line = ((Answering.Answered) calculator.answer(READER)).lines().getFirst();
        var places = new RecordFigures(empty, LABELS).toPut(calculator, line);
        var seat = places.stream().filter(figure -> figure.field().key().equals("rawWater.siphonBreak.ventSeat.z")).findFirst().orElseThrow();
        new RecordFigures(empty, LABELS).put(line, seat.field(), "Put");
        assertThat(empty.record().getRawWater().getSiphonBreak().getVentSeat().getZ()).isEqualTo(Length.valueOf("300 mm"));
        empty.edits().undo();
        assertThat(empty.record().getRawWater()).isNull();
    }

    @Test
    void offersNoPlaceInWhatIsSigned() {
        Calculator calculator = calculator("clearance-curve");
        assertThat(figures.toTake(calculator, input(calculator, "steps"))).extracting(figure -> figure.field().key())
            .noneMatch(key -> key.startsWith("signatures") || key.startsWith("revisions"));
    }
}
