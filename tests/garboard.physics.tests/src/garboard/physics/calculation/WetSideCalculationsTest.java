// SPDX-License-Identifier: EPL-2.0
package garboard.physics.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import garboard.physics.PrintedQuantity;
import garboard.physics.air.AirCalculations;
import garboard.physics.exhaust.ExhaustCalculations;
import garboard.physics.fuel.FuelCalculations;
import garboard.physics.geometry.GeometryCalculations;
import garboard.physics.pipe.PipeCalculations;
import garboard.physics.rawwater.RawWaterCalculations;

/** Every named calculation of the wet side, asked by text, answers the printed figure. The rows are in {@code wet-side-calculations.txt}. */
class WetSideCalculationsTest {

    /** A row of the table: calculation, arguments, name of the result, printed result. The source closes the row in the file. */
    record Row(String calculation, Map<String, String> arguments, String result, String printed) {

        static Row of(String line) {
            String[] cells = line.split("\\|");
            assertThat(cells).as(line).hasSize(5);
            Map<String, String> arguments = new LinkedHashMap<>();
            for (String argument : cells[1].split(";")) {
                String[] parts = argument.split("=");
                arguments.put(parts[0].strip(), parts[1].strip());
            }
            return new Row(cells[0].strip(), arguments, cells[2].strip(), cells[3].strip());
        }
    }

    static List<Row> rows() throws IOException {
        try (var in = new BufferedReader(new InputStreamReader(
            WetSideCalculationsTest.class.getResourceAsStream("wet-side-calculations.txt"), StandardCharsets.UTF_8))) {
            return in.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).map(Row::of).toList();
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void answersThePrintedFigure(Row row) throws CalculationException {
        Answer answer = find(row.calculation()).evaluate(row.arguments());
        Answer.Result result = answer.results().stream().filter(one -> one.name().equals(row.result())).findFirst()
            .orElseThrow(() -> new AssertionError(row.result() + " is not among " + answer.results()));
        switch (result) {
            case Answer.Figure figure -> PrintedQuantity.assertPrinted(row.printed(), figure.quantity());
            case Answer.Words words -> assertThat(words.text()).isEqualTo(row.printed());
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void namesOnlyUnitsThatTheQuantityHas(Row row) throws CalculationException {
        for (Answer.Result result : find(row.calculation()).evaluate(row.arguments()).results()) {
            if (result instanceof Answer.Figure figure) {
                assertThat(figure.units()).allMatch(unit -> figure.quantity().kind().accepts(unit));
            }
        }
    }

    @Test
    void leavesNoCalculationOut() throws IOException {
        assertThat(all().map(Calculation::name)).containsExactlyInAnyOrderElementsOf(
            rows().stream().map(Row::calculation).distinct().toList());
    }

    private static Calculation find(String name) {
        return all().filter(calculation -> calculation.name().equals(name)).findFirst()
            .orElseThrow(() -> new AssertionError("no calculation " + name));
    }

    private static Stream<Calculation> all() {
        return Stream.of(GeometryCalculations.all(), PipeCalculations.all(), ExhaustCalculations.all(), RawWaterCalculations.all(),
            FuelCalculations.all(), AirCalculations.all()).flatMap(List::stream);
    }
}
