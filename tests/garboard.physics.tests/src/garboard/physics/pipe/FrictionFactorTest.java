// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import static garboard.physics.PrintedQuantity.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Ratio;

class FrictionFactorTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # Re   | roughness over bore | f | source
            272727 | 0.0008  | 0.01983  | Moody 1944, also White, Fluid Mechanics, Ex. 6.6, recomputed with Colebrook
            127324 | 0.0013  | 0.02272  | White, Fluid Mechanics, Ex. 6.7, recomputed with Colebrook
            274787 | 0.0008  | 0.019824 | White, Fluid Mechanics, Ex. 6.9, recomputed with Colebrook
            274900 | 0.0008  | 0.01982  | White, Fluid Mechanics, Ex. 6.9 as printed
            126400 | 4.2e-5  | 0.0174   | Cengel and Cimbala, Fluid Mechanics, Ex. 8-3 (result from memory)
            126432 | 4.2e-5  | 0.01740  | Cengel and Cimbala, Ex. 8-3, recomputed with Colebrook
            599993 | 0.0004  | 0.016842 | Surge Analysis and the Wave Plan Method, problem 0.2, recomputed with Colebrook
            """)
    void solvesColebrook(double reynolds, double roughness, String factor, String source) {
        assertPrinted(factor, FrictionFactor.colebrook(Ratio.of(reynolds), Ratio.of(roughness)));
        assertPrinted(factor, FrictionFactor.of(Ratio.of(reynolds), Ratio.of(roughness)));
    }

    @Test
    void agreesWithTheExplicitFormula() {
        // Surge Analysis and the Wave Plan Method, ch. 0, problem 0.2: 0.0169 printed, 0.016948 recomputed
        assertPrinted("0.0169", FrictionFactor.swameeJain(Ratio.of(599993), Ratio.of(0.0004)));
        assertPrinted("0.016948", FrictionFactor.swameeJain(Ratio.of(599993), Ratio.of(0.0004)));
        // largest difference in the range, recomputed independently by iterating Colebrook: 2.83 %, at Re 5000 and a roughness of 0.01;
        // 1.42 % for a smooth wall
        for (double re = 5000; re < 1e8; re *= 1.7) {
            for (double rough : new double[] {0, 1e-6, 1e-5, 1e-4, 1e-3, 1e-2}) {
                double explicit = FrictionFactor.swameeJain(Ratio.of(re), Ratio.of(rough)).si();
                double implicit = FrictionFactor.colebrook(Ratio.of(re), Ratio.of(rough)).si();
                assertThat(explicit / implicit).isCloseTo(1, within(rough == 0 ? 0.01425 : 0.02835));
            }
        }
    }

    @Test
    void meetsTheColebrookEquation() {
        for (double re = 2300; re <= 1e8; re *= 1.5) {
            for (double rough : new double[] {0, 1e-5, 1e-3, 0.05}) {
                double f = FrictionFactor.colebrook(Ratio.of(re), Ratio.of(rough)).si();
                assertThat(1 / Math.sqrt(f)).isCloseTo(-2 * Math.log10(rough / 3.7 + 2.51 / (re * Math.sqrt(f))), within(1e-9));
            }
        }
    }

    @Test
    void takesTheTurbulentFactorInTheTransition() {
        assertThat(FrictionFactor.of(Ratio.of(2299), Ratio.of(0)).si()).isEqualTo(64.0 / 2299); // White, Fluid Mechanics: f = 64 / Re
        assertThat(FrictionFactor.of(Ratio.of(2300), Ratio.of(0))).isEqualTo(FrictionFactor.colebrook(Ratio.of(2300), Ratio.of(0)));
        assertThat(Reynolds.regime(Ratio.of(2300))).isEqualTo(Reynolds.Regime.TRANSITIONAL);
        assertThat(Reynolds.regime(Ratio.of(4000))).isEqualTo(Reynolds.Regime.TURBULENT);
        assertThat(Reynolds.regime(Ratio.of(2299.9))).isEqualTo(Reynolds.Regime.LAMINAR);
    }

    @Test
    void refusesWhatTheFormulasDoNotCover() {
        assertThatThrownBy(() -> FrictionFactor.laminar(Ratio.of(2400))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> FrictionFactor.laminar(Ratio.of(0))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> FrictionFactor.colebrook(Ratio.of(2000), Ratio.of(0.001))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> FrictionFactor.colebrook(Ratio.of(1e5), Ratio.of(0.06))).isInstanceOf(OutOfRangeException.class)
            .hasMessageContaining("relative roughness");
        assertThatThrownBy(() -> FrictionFactor.swameeJain(Ratio.of(4000), Ratio.of(0.001))).isInstanceOf(OutOfRangeException.class);
        // arguments mixed up
        assertThatThrownBy(() -> FrictionFactor.of(Ratio.of(0.001), Ratio.of(1e5))).isInstanceOf(OutOfRangeException.class);
    }
}
