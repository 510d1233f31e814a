// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Current;

class GroundingConductorTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            15 A  | 14 AWG  | NFPA 70 Table 250.122, quoted by a third party
            16 A  | 12 AWG  | NFPA 70 Table 250.122, quoted by a third party
            20 A  | 12 AWG  | NFPA 70 Table 250.122, quoted by a third party
            50 A  | 10 AWG  | NFPA 70 Table 250.122, quoted by a third party
            60 A  | 10 AWG  | NFPA 70 Table 250.122, quoted by a third party
            100 A | 8 AWG   | NFPA 70 Table 250.122, quoted by a third party
            200 A | 6 AWG   | NFPA 70 Table 250.122, quoted by a third party
            400 A | 3 AWG   | NFPA 70 Table 250.122, quoted by a third party
            800 A | 1/0 AWG | NFPA 70 Table 250.122, quoted by a third party
            """)
    void groundsEquipmentByItsDevice(String device, String size, String source) {
        assertThat(GroundingConductor.equipment(Current.valueOf(device))).hasToString(size);
    }

    @Test
    void growsWithEnlargedPhases() {
        // NFPA 70 250.122(B), recomputed independently: 10 383 x 41 741 / 26 251 = 16 510 circular mils
        var phases = new GroundingConductor.PhaseEnlargement(ConductorSize.awg(6), ConductorSize.awg(4));
        assertThat(GroundingConductor.equipment(Current.valueOf("50 A"), phases)).isEqualTo(ConductorSize.awg(8));
        var same = new GroundingConductor.PhaseEnlargement(ConductorSize.awg(6), ConductorSize.awg(6));
        assertThat(GroundingConductor.equipment(Current.valueOf("50 A"), same)).isEqualTo(ConductorSize.awg(10));
        assertThatThrownBy(() -> new GroundingConductor.PhaseEnlargement(ConductorSize.awg(4), ConductorSize.awg(6)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> GroundingConductor.equipment(Current.valueOf("900 A"))).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            6 AWG      | 8 AWG   | 46 CFR Table 111.05-31(b)
            2 AWG      | 8 AWG   | 46 CFR Table 111.05-31(b)
            1/0 AWG    | 6 AWG   | 46 CFR Table 111.05-31(b)
            3/0 AWG    | 4 AWG   | 46 CFR Table 111.05-31(b)
            4/0 AWG    | 2 AWG   | 46 CFR Table 111.05-31(b)
            35 mm2     | 6 AWG   | 46 CFR Table 111.05-31(b): above 33.6 mm2
            350 kcmil  | 2 AWG   | 46 CFR Table 111.05-31(b)
            600 kcmil  | 1/0 AWG | 46 CFR Table 111.05-31(b)
            1100 kcmil | 2/0 AWG | 46 CFR Table 111.05-31(b)
            1200 kcmil | 3/0 AWG | 46 CFR Table 111.05-31(b)
            """)
    void groundsTheNeutralByTheGeneratorCable(String cable, String size, String source) {
        assertThat(GroundingConductor.acNeutral(ConductorSize.valueOf(cable))).hasToString(size);
    }

    @Test
    void groundsDirectCurrentWithAtLeastEightGauge() {
        assertThat(GroundingConductor.dcSystem(ConductorSize.awg(10))).hasToString("8 AWG"); // 46 CFR 111.05-31(a)
        assertThat(GroundingConductor.dcSystem(ConductorSize.valueOf("2/0"))).hasToString("2/0 AWG"); // 46 CFR 111.05-31(a)
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            18 AWG  | 10  | ABYC E-11, from memory
            10 AWG  | 40  | ABYC E-11, from memory
            4 AWG   | 70  | ABYC E-11, from memory
            1/0 AWG | 125 | ABYC E-11, from memory
            4/0 AWG | 225 | ABYC E-11, from memory
            """)
    void pullsATerminal(String gauge, String poundForce, String source) {
        assertPrinted(poundForce, TerminalPull.force(ConductorSize.valueOf(gauge)).in("lbf"));
    }

    @Test
    void pullsATerminalInNewton() {
        assertPrinted("311", TerminalPull.force(ConductorSize.awg(4)).si()); // ABYC E-11 (from memory), 70 lbf x 4.448
        assertThatThrownBy(() -> TerminalPull.force(ConductorSize.squareMillimetre(16))).isInstanceOf(OutOfRangeException.class);
    }
}
