// SPDX-License-Identifier: EPL-2.0
package garboard.physics.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import garboard.physics.PrintedQuantity;
import garboard.physics.ac.AcCalculations;
import garboard.physics.battery.BatteryCalculations;
import garboard.physics.cable.CableCalculations;
import garboard.physics.rating.RatingCalculations;
import garboard.physics.statistics.MeasurementCalculations;

/** Every named calculation of the electrical side, asked by text, answers the printed figure. The rows are in {@code electrical-calculations.txt}. */
class ElectricalCalculationsTest {

    static List<WetSideCalculationsTest.Row> rows() throws IOException {
        try (var in = new BufferedReader(new InputStreamReader(
                ElectricalCalculationsTest.class.getResourceAsStream("electrical-calculations.txt"), StandardCharsets.UTF_8))) {
            return in.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).map(WetSideCalculationsTest.Row::of).toList();
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void answersThePrintedFigure(WetSideCalculationsTest.Row row) throws CalculationException {
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
    void namesOnlyUnitsThatTheQuantityHas(WetSideCalculationsTest.Row row) throws CalculationException {
        for (Answer.Result result : find(row.calculation()).evaluate(row.arguments()).results()) {
            if (result instanceof Answer.Figure figure) {
                assertThat(figure.units()).isNotEmpty().allMatch(unit -> figure.quantity().kind().accepts(unit));
            }
        }
    }

    @Test
    void leavesNoCalculationOut() throws IOException {
        assertThat(all().map(Calculation::name)).containsExactlyInAnyOrderElementsOf(
                rows().stream().map(WetSideCalculationsTest.Row::calculation).distinct().toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            battery-block-spread   | highest = 12.75 V; lowest = 12.35 V                             | weak block
            voltage-unbalance      | line-1 = 400 V; line-2 = 360 V; line-3 = 400 V                   | motors must not run
            split-phase            | leg-a = 45 A; leg-b = 33 A; rated = 8 kVA                        | overloaded
            split-phase            | leg-a = 30.0 A; leg-b = 22.4 A; rated = 8 kVA                     | at most 25 %
            phase-spread           | phase-1 = 235 V; phase-2 = 231 V; phase-3 = 230 V                | more than 1 %
            motor-code-letter      | power = 1 hp; code-letter = v; voltage = 230 V                   | no upper end
            performance-class      | frequency-droop = 4 %                                            | not given: steady-frequency-band
            derating-iso3046       | engine = diesel-turbocharged; air = 5 degC; rated = 20 kW        | above 100 %
            derating-iso3046       | engine = diesel-turbocharged; air = 45 degC; rated = 20 kW       | unverified
            average-power          | rated = 20 kW; power-1 = 19 kW; time-1 = 5 h                     | more than the category allows
            droop-regression       | rated = 20 kW; rated-frequency = 60 Hz; load-1 = 0 kW; frequency-1 = 62 Hz; load-2 = 5 kW; \
            frequency-2 = 61.9 Hz; load-3 = 10 kW; frequency-3 = 61.7 Hz; load-4 = 15 kW; frequency-4 = 61 Hz; load-5 = 20 kW; \
            frequency-5 = 59 Hz | not a straight line
            ampacity-iso           | size = 16 mm2                                                    | from memory
            """)
    void warns(String name, String arguments, String words) throws CalculationException {
        WetSideCalculationsTest.Row row = WetSideCalculationsTest.Row.of(name + "|" + arguments + "|-|-|-");
        assertThat(find(row.calculation()).evaluate(row.arguments()).warnings()).anyMatch(warning -> warning.contains(words));
    }

    @Test
    void staysSilentWhereNothingIsWrong() throws CalculationException {
        assertThat(find("battery-block-spread").evaluate(Map.of("highest", "12.75 V", "lowest", "12.70 V")).warnings()).isEmpty();
        assertThat(find("split-phase").evaluate(Map.of("leg-a", "30 A", "leg-b", "28 A", "rated", "8 kVA")).warnings()).isEmpty();
        assertThat(find("droop-regression").evaluate(Map.of("rated", "20 kW", "rated-frequency", "60 Hz", "load-1", "0 kW", "frequency-1", "61.5 Hz",
                "load-2", "5 kW", "frequency-2", "61.0 Hz", "load-3", "15 kW", "frequency-3", "60.0 Hz", "load-4", "20 kW", "frequency-4", "59.5 Hz"))
                .warnings()).isEmpty();
        assertThat(find("average-power").evaluate(Map.of("rated", "20 kW", "power-1", "9 kW", "time-1", "5 h")).warnings()).isEmpty();
    }

    @Test
    void passesOnWhatTheFormulaRefuses() {
        assertThatThrownBy(() -> find("battery-state-of-charge").evaluate(Map.of("type", "agm", "rested-voltage", "25.6 V")))
                .isInstanceOf(CalculationException.class).hasMessageContaining("13.2 V");
        assertThatThrownBy(() -> find("ampacity-33cfr183").evaluate(Map.of("size", "0.5 mm2"))).isInstanceOf(CalculationException.class)
                .hasMessageContaining("18 AWG");
        assertThatThrownBy(() -> find("droop-regression").evaluate(Map.of("rated", "20 kW", "rated-frequency", "60 Hz", "load-1", "0 kW",
                "frequency-1",
                "61 Hz"))).isInstanceOf(CalculationException.class).hasMessageContaining("4 or more");
        assertThatThrownBy(() -> find("cable-size").evaluate(Map.of("current", "10 A", "loop", "5 m", "allowed-drop", "0 V")))
                .isInstanceOf(CalculationException.class).hasMessageContaining("more than 0");
    }

    private static Calculation find(String name) {
        return all().filter(calculation -> calculation.name().equals(name)).findFirst()
                .orElseThrow(() -> new AssertionError("no calculation " + name));
    }

    private static Stream<Calculation> all() {
        return Stream.of(BatteryCalculations.all(), CableCalculations.all(), AcCalculations.all(), RatingCalculations.all(),
                MeasurementCalculations.all())
                .flatMap(List::stream);
    }
}
