// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;

import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

class VoltageTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # highest | lowest | rated | spread | farthest
            241.5 V | 232.0 V | 230 V | 2.07 | 5.0 | ISO 8528-5 form (from memory), recomputed independently
            122.0 V | 118.5 V | 120 V | 1.46 | 1.7 | ISO 8528-5 form (from memory), recomputed independently
            """)
    void measuresHalfTheSpreadAndTheFarthestReading(String highest, String lowest, String rated, String spread, String farthest, String source) {
        List<Voltage> readings = Stream.of(lowest, highest).map(Voltage::valueOf).toList();
        assertPrinted(spread, SteadyVoltage.deviation(readings, Voltage.valueOf(rated)).in("%"));
        assertPrinted(farthest, SteadyVoltage.farthest(readings, Voltage.valueOf(rated)).in("%"));
        assertThatThrownBy(() -> SteadyVoltage.deviation(List.of(), Voltage.of(230))).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            186 V   | -19.1 | against rated volts (US Army), recomputed independently
            195 V   | -15.2 | against rated volts (US Army), recomputed independently
            281 V   | 22.2  | against rated volts (US Army), recomputed independently
            195.5 V | -15.0 | class G3 limit on 230 V and Lloyd's Register naval rules 9-2-6.4 floor, recomputed independently
            276.0 V | 20.0  | class G3 limit on 230 V, recomputed independently
            """)
    void swingsAgainstRated(String reached, String perCent, String source) {
        assertPrinted(perCent, VoltageTransient.reached(Voltage.valueOf(reached)).againstRated(Voltage.valueOf("230 V")).in("%"));
    }

    private static LineVoltages line(double first, double second, double third) {
        return new LineVoltages(Voltage.of(first), Voltage.of(second), Voltage.of(third));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            462 | 463 | 455 | 1.09 |      | NEMA MG 1 definition, recomputed independently
            460 | 467 | 450 | 1.96 | 2.15 | NEMA MG 1 and symmetrical components, recomputed independently
            203 | 210 | 212 | 2.56 | 2.61 | NEMA MG 1 and symmetrical components, recomputed independently
            480 | 476 | 472 | 0.84 | 0.97 | NEMA MG 1 and symmetrical components, recomputed independently
            400 | 395 | 388 | 1.61 |      | NEMA MG 1 definition; a printed example says 1.45, which its own numbers do not give
            208 | 206 | 199 | 2.61 |      | NEMA MG 1 definition; a printed example says 2.3, which its own numbers do not give
            400 | 395 | 390 | 1.27 |      | printed example of the NEMA definition: 1.27 %
            """)
    void measuresUnbalance(double first, double second, double third, String nema, String iec, String source) {
        assertPrinted(nema, line(first, second, third).unbalanceNema().in("%"));
        if (iec != null) {
            assertPrinted(iec, line(first, second, third).unbalanceIec().in("%"));
        }
    }

    @Test
    void agreesWithTheSymmetricalComponents() {
        // Fortescue: build the triangle of line voltages as phasors and take its components.
        Complex turn = Complex.valueOf(Math.cos(2 * Math.PI / 3), Math.sin(2 * Math.PI / 3));
        for (double[] volts : new double[][] {{400, 380, 410}, {230, 231, 200}, {100, 99, 60}, {450, 460, 467}}) {
            Complex first = Complex.valueOf(volts[0]);
            double corner = Math.acos((volts[0] * volts[0] + volts[1] * volts[1] - volts[2] * volts[2]) / (2 * volts[0] * volts[1]));
            Complex second = Complex.valueOf(volts[1] * Math.cos(Math.PI - corner), -volts[1] * Math.sin(Math.PI - corner));
            Complex third = first.add(second).negate();
            Complex positive = first.add(turn.multiply(second)).add(turn.multiply(turn).multiply(third));
            Complex negative = first.add(turn.multiply(turn).multiply(second)).add(turn.multiply(third));
            assertThat(third.norm()).isCloseTo(volts[2], within(1e-9));
            assertThat(line(volts[0], volts[1], volts[2]).unbalanceIec().si()).isCloseTo(negative.norm() / positive.norm(), within(1e-9));
        }
    }

    @Test
    void findsBalancedVoltagesBalanced() {
        assertThat(line(400, 400, 400).unbalanceNema().si()).isZero();
        assertThat(line(400, 400, 400).unbalanceIec().si()).isLessThan(1e-7);
        assertThat(line(400, 200, 200).unbalanceIec().si()).isCloseTo(1, within(1e-7)); // a flat triangle is a single phase
        assertThatThrownBy(() -> line(400, 100, 200)).isInstanceOf(OutOfRangeException.class).hasMessageContaining("triangle");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1.96 % | 0.95 | NEMA MG 1 curve, quoted by a third party
            2.56 % | 0.93 | NEMA MG 1 curve, quoted by a third party
            3 %    | 0.89 | NEMA MG 1 curve, quoted by a third party (0.90 and 0.88 are printed too)
            0 %    | 1.00 | NEMA MG 1 curve, quoted by a third party
            5 %    | 0.76 | NEMA MG 1 curve, quoted by a third party
            """)
    void deratesMotors(String unbalance, String factor, String source) {
        assertPrinted(factor, MotorSupply.deratingByUnbalance(Ratio.valueOf(unbalance)).si());
    }

    @Test
    void givesNoFactorWhereMotorsMustNotRun() {
        assertThatThrownBy(() -> MotorSupply.deratingByUnbalance(Ratio.valueOf("5.1 %"))).isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("must not run");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # frequency | voltage | sum | tolerated
            4 %  | -7 %  | 11 | false | NEMA MG 1, quoted by a third party
            5 %  | 5 %   | 10 | true  | NEMA MG 1, quoted by a third party
            0 %  | 10 %  | 10 | true  | NEMA MG 1, quoted by a third party
            0 %  | -11 % | 11 | false | NEMA MG 1, quoted by a third party
            -6 % | 0 %   | 6  | false | NEMA MG 1, quoted by a third party
            """)
    void tellsWhatAMotorTolerates(String frequency, String voltage, String sum, boolean tolerated, String source) {
        MotorSupply supply = MotorSupply.rated().withFrequency(Ratio.valueOf(frequency)).withVoltage(Ratio.valueOf(voltage));
        assertPrinted(sum, supply.combined().in("%"));
        assertThat(supply.tolerated()).isEqualTo(tolerated);
    }

    @Test
    void measuresTheSpreadOverThePhases() {
        List<Voltage> phases = Stream.of("230.9 V", "231.6 V", "229.8 V").map(Voltage::valueOf).toList();
        assertPrinted("0.78", PhaseBalance.voltageSpread(phases).in("%")); // UFGS 16237N, 16263A, 16264A form, recomputed independently
        List<Current> currents = Stream.of("36 A", "33 A", "30 A").map(Current::valueOf).toList();
        assertPrinted("16.7", PhaseBalance.currentImbalance(currents).in("%")); // (I max - I min) / I max, recomputed independently
        assertThatThrownBy(() -> PhaseBalance.currentImbalance(List.of(Current.of(0), Current.of(0)))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> PhaseBalance.voltageSpread(phases.subList(0, 1))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void sharesTheLoadOverTwoLegs() {
        // Kirchhoff's law for an 8 kVA 120/240 V set, recomputed independently
        Voltage leg = Voltage.valueOf("120 V");
        ApparentPower rated = ApparentPower.valueOf("8 kVA");
        SplitPhaseLoad load = new SplitPhaseLoad(Current.valueOf("45 A"), Current.valueOf("33 A"));
        assertPrinted("33.3", SplitPhaseLoad.legLimit(rated, leg).si());
        assertPrinted("12", load.neutral().si());
        assertPrinted("26.7", load.imbalance().in("%"));
        assertPrinted("9.36", load.total(leg).in("kVA"));
        assertPrinted("135", load.heavierLegShare(rated, leg).in("%"));
        assertThat(new SplitPhaseLoad(Current.of(0), Current.of(0)).imbalance().si()).isZero();
    }
}
