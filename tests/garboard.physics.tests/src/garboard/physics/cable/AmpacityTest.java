// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Current;

class AmpacityTest {

    private static ConductorRun run(String size, InsulationRating insulation) {
        return ConductorRun.of(ConductorSize.valueOf(size), insulation);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # gauge | 60 | 75 | 80 | 90 | 105 | 125 | 200 | 105 in engine space
            18 AWG  | 10  | 10  | 15  | 20  | 20  | 25  | 25  | 17.0   | 33 CFR 183.425 Table 5 and note 1
            16 AWG  | 15  | 15  | 20  | 25  | 25  | 30  | 35  | 21.25  | 33 CFR 183.425 Table 5 and note 1
            14 AWG  | 20  | 20  | 25  | 30  | 35  | 40  | 45  | 29.75  | 33 CFR 183.425 Table 5 and note 1
            12 AWG  | 25  | 25  | 35  | 40  | 45  | 50  | 55  | 38.25  | 33 CFR 183.425 Table 5 and note 1
            10 AWG  | 40  | 40  | 50  | 55  | 60  | 70  | 70  | 51.0   | 33 CFR 183.425 Table 5 and note 1
            8 AWG   | 55  | 65  | 70  | 70  | 80  | 90  | 100 | 68.0   | 33 CFR 183.425 Table 5 and note 1
            6 AWG   | 80  | 95  | 100 | 100 | 120 | 125 | 135 | 102.0  | 33 CFR 183.425 Table 5 and note 1
            4 AWG   | 105 | 125 | 130 | 135 | 160 | 170 | 180 | 136.0  | 33 CFR 183.425 Table 5 and note 1
            3 AWG   | 120 | 145 | 150 | 155 | 180 | 195 | 210 | 153.0  | 33 CFR 183.425 Table 5 and note 1
            2 AWG   | 140 | 170 | 175 | 180 | 210 | 225 | 240 | 178.5  | 33 CFR 183.425 Table 5 and note 1
            1 AWG   | 165 | 195 | 210 | 210 | 245 | 265 | 280 | 208.25 | 33 CFR 183.425 Table 5 and note 1
            0 AWG   | 195 | 230 | 245 | 245 | 285 | 305 | 325 | 242.25 | 33 CFR 183.425 Table 5 and note 1
            00 AWG  | 225 | 265 | 285 | 285 | 330 | 355 | 370 | 280.5  | 33 CFR 183.425 Table 5 and note 1
            000 AWG | 260 | 310 | 330 | 330 | 385 | 410 | 430 | 327.25 | 33 CFR 183.425 Table 5 and note 1
            0000    | 300 | 360 | 385 | 385 | 445 | 475 | 510 | 378.25 | 33 CFR 183.425 Table 5 and note 1
            """)
    void readsTable5(String gauge, String c60, String c75, String c80, String c90, String c105, String c125, String c200, String engineSpace,
            String source) {
        ConductorSize size = ConductorSize.valueOf(gauge);
        assertPrinted(c60, Ampacity33Cfr183.table5(size, InsulationRating.C60).si());
        assertPrinted(c75, Ampacity33Cfr183.table5(size, InsulationRating.C75).si());
        assertPrinted(c80, Ampacity33Cfr183.table5(size, InsulationRating.C80).si());
        assertPrinted(c90, Ampacity33Cfr183.table5(size, InsulationRating.C90).si());
        assertPrinted(c105, Ampacity33Cfr183.table5(size, InsulationRating.C105).si());
        assertPrinted(c125, Ampacity33Cfr183.table5(size, InsulationRating.C125).si());
        assertPrinted(c200, Ampacity33Cfr183.table5(size, InsulationRating.C200).si());
        assertPrinted(engineSpace, Ampacity33Cfr183.allowedBelow50V(run(gauge, InsulationRating.C105).withEngineSpace()).si());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # rating | printed
            C60  | .58  | 33 CFR 183.425 note 1; agrees with sqrt((T-50)/(T-30)) = 0.577
            C75  | .75  | 33 CFR 183.425 note 1; agrees with sqrt((T-50)/(T-30)) = 0.745
            C90  | .82  | 33 CFR 183.425 note 1; agrees with sqrt((T-50)/(T-30)) = 0.816
            C125 | .89  | 33 CFR 183.425 note 1 (from memory); sqrt((T-50)/(T-30)) = 0.888
            """)
    void takesTheEngineSpaceFactorNearTheHeatBalance(InsulationRating insulation, String printed, String source) {
        assertPrinted(printed, Ampacity33Cfr183.engineSpaceFactor(insulation).si());
        assertPrinted(printed, Math.sqrt((insulation.celsius - 50.0) / (insulation.celsius - 30)));
    }

    @Test
    void keepsTheTablesFactorsWhereTheyLeaveTheHeatBalance() {
        assertPrinted(".78", Ampacity33Cfr183.engineSpaceFactor(InsulationRating.C80).si()); // note 1 (from memory); heat balance 0.775
        assertPrinted(".85", Ampacity33Cfr183.engineSpaceFactor(InsulationRating.C105).si()); // 33 CFR 183.425 note 1; heat balance 0.856
        assertPrinted("1.00", Ampacity33Cfr183.engineSpaceFactor(InsulationRating.C200).si()); // note 1 (from memory); heat balance 0.939
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1  | 1.00 | 33 CFR 183.435(b)
            2  | 1.00 | 33 CFR 183.435(b)
            3  | 0.70 | 33 CFR Table 5 note 2, quoted by a third party
            4  | 0.60 | 33 CFR Table 5 note 2, quoted by a third party
            6  | 0.60 | 33 CFR Table 5 note 2, quoted by a third party
            7  | 0.50 | 33 CFR Table 5 note 2, quoted by a third party
            24 | 0.50 | 33 CFR Table 5 note 2, quoted by a third party
            25 | 0.40 | 33 CFR Table 5 note 2, quoted by a third party
            """)
    void reducesABundle(int conductors, String factor, String source) {
        assertPrinted(factor, Ampacity33Cfr183.bundleFactor(conductors).si());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # size | rating | engine space | conductors | below 50 V | from 50 V
            8 AWG  | C75  | true  | 1  | 48.75 | 48.75  | 33 CFR 183.425 and 183.435, products recomputed independently
            4 AWG  | C60  | true  | 1  | 60.9  | 60.9   | 33 CFR 183.425 and 183.435, products recomputed independently
            4 AWG  | C105 | true  | 1  | 136.0 | 136.0  | 33 CFR 183.425 and 183.435, products recomputed independently
            10 AWG | C105 | true  | 3  | 51.0  | 35.7   | 33 CFR 183.425 and 183.435, products recomputed independently
            6 AWG  | C105 | true  | 3  | 102.0 | 71.4   | 33 CFR 183.425 and 183.435, products recomputed independently
            2 AWG  | C105 | true  | 3  | 178.5 | 124.95 | 33 CFR 183.425 and 183.435, products recomputed independently
            6 AWG  | C105 | true  | 4  | 102.0 | 61.2   | 33 CFR 183.425 and 183.435, products recomputed independently
            6 AWG  | C105 | true  | 7  | 102.0 | 51.0   | 33 CFR 183.425 and 183.435, products recomputed independently
            00 AWG | C90  | true  | 3  | 233.7 | 163.59 | 33 CFR 183.425 and 183.435, products recomputed independently
            12 AWG | C105 | false | 25 | 45.0  | 18.0   | 33 CFR 183.425 and 183.435, products recomputed independently
            """)
    void multipliesTheFactors(String size, InsulationRating insulation, boolean engineSpace, int conductors, String below, String from,
            String source) {
        ConductorRun laid = run(size, insulation).withCarryingTogether(conductors);
        ConductorRun placed = engineSpace ? laid.withEngineSpace() : laid;
        assertPrinted(below, Ampacity33Cfr183.allowedBelow50V(placed).si());
        assertPrinted(from, Ampacity33Cfr183.allowedFrom50V(placed).si());
    }

    @Test
    void refusesWhatTable5DoesNotList() {
        assertThatThrownBy(() -> Ampacity33Cfr183.table5(ConductorSize.awg(20), InsulationRating.C105)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Ampacity33Cfr183.table5(ConductorSize.squareMillimetre(16), InsulationRating.C105))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("16 mm2");
        assertThatThrownBy(() -> Ampacity33Cfr183.table5(ConductorSize.awg(10), InsulationRating.C70)).isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("70 degC");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # size | rating | engine space | together | ampere
            16 mm2   | C105 | false | 1  | 130   | ISO 10133 annex, from memory
            16 mm2   | C105 | true  | 1  | 111.8 | ISO 10133 annex, from memory; product recomputed independently
            6 mm2    | C70  | false | 5  | 31.5  | ISO 10133 annex, from memory; product recomputed independently
            6 mm2    | C70  | false | 3  | 45    | ISO 10133 annex: bundles count from four
            70 mm2   | C90  | true  | 1  | 233.7 | ISO 10133 annex, from memory; product recomputed independently
            0.75 mm2 | C60  | false | 1  | 6     | ISO 10133 annex, from memory
            150 mm2  | C200 | false | 1  | 560   | ISO 10133 annex, from memory
            10 mm2   | C125 | true  | 24 | 53.4  | ISO 10133 annex, from memory; product recomputed independently
            10 mm2   | C85  | false | 25 | 35.0  | ISO 10133 annex, from memory; product recomputed independently
            """)
    void followsTheIsoAnnex(String size, InsulationRating insulation, boolean engineSpace, int together, String ampere, String source) {
        ConductorRun laid = run(size, insulation).withCarryingTogether(together);
        assertPrinted(ampere, AmpacityIso.allowed(engineSpace ? laid.withEngineSpace() : laid).si());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            3  | 1.0 | ISO 10133: bundles count from four
            4  | 0.7 | ISO 10133 annex, from memory
            6  | 0.7 | ISO 10133 annex, from memory
            7  | 0.6 | ISO 10133 annex, from memory
            24 | 0.6 | ISO 10133 annex, from memory
            25 | 0.5 | ISO 10133 annex, from memory
            """)
    void reducesABundleByTheAnnex(int conductors, String factor, String source) {
        assertPrinted(factor, AmpacityIso.bundleFactor(conductors).si());
    }

    @Test
    void refusesWhatTheAnnexDoesNotList() {
        assertThatThrownBy(() -> AmpacityIso.annex(ConductorSize.awg(10), InsulationRating.C105)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> AmpacityIso.annex(ConductorSize.squareMillimetre(240), InsulationRating.C105))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> AmpacityIso.annex(ConductorSize.squareMillimetre(16), InsulationRating.C75)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> AmpacityIso.engineSpaceFactor(InsulationRating.C60)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void limitsADeviceBelow50Volt() {
        ConductorRun hot = run("10 AWG", InsulationRating.C105).withEngineSpace();
        assertPrinted("90", OvercurrentDevice.limitBelow50VLiteral(hot).si()); // 33 CFR 183.455(c)(1), literal
        assertPrinted("76.5", OvercurrentDevice.limitBelow50VConservative(hot).si()); // 33 CFR 183.455(c)(1), after note 1
        assertThat(OvercurrentDevice.largestStandard(Current.valueOf("76.5 A")).orElseThrow().si()).isEqualTo(70); // NFPA 70 240.6
        assertThat(OvercurrentDevice.largestStandard(Current.valueOf("90 A")).orElseThrow().si()).isEqualTo(90);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            35.7 A | 40  | 35  | 33 CFR 183.455(c)(2) with NFPA 70 240.6; ISO 13297 not above
            51.0 A | 60  | 50  | 33 CFR 183.455(c)(2) with NFPA 70 240.6; ISO 13297 not above
            60 A   | 60  | 60  | 33 CFR 183.455(c)(2) with NFPA 70 240.6; ISO 13297 not above
            18.0 A | 20  | 15  | 33 CFR 183.455(c)(2) with NFPA 70 240.6; ISO 13297 not above
            301 A  | 350 | 300 | 33 CFR 183.455(c)(2) with NFPA 70 240.6; ISO 13297 not above
            """)
    void allowsTheNextStandardSizeFrom50Volt(String allowed, double largest, double iso, String source) {
        assertThat(OvercurrentDevice.largestFrom50V(Current.valueOf(allowed)).orElseThrow().si()).isEqualTo(largest);
        assertThat(OvercurrentDevice.largestIso(Current.valueOf(allowed)).orElseThrow().si()).isEqualTo(iso);
    }

    @Test
    void knowsTheEndsOfTheListOfSizes() {
        assertThat(OvercurrentDevice.largestFrom50V(Current.valueOf("9 A"))).isEmpty(); // 15 A would be 167 %
        assertThat(OvercurrentDevice.largestFrom50V(Current.valueOf("10 A")).orElseThrow().si()).isEqualTo(15); // exactly 150 %
        assertThat(OvercurrentDevice.largestIso(Current.valueOf("14.9 A"))).isEmpty();
        assertThatThrownBy(() -> OvercurrentDevice.largestFrom50V(Current.valueOf("401 A"))).isInstanceOf(OutOfRangeException.class);
        assertThat(OvercurrentDevice.smallestStandard(Current.valueOf("41.5 A")).si()).isEqualTo(45);
        assertThatThrownBy(() -> OvercurrentDevice.smallestStandard(Current.valueOf("401 A"))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void limitsTheDeviceOfAnAlternator() {
        assertThat(OvercurrentDevice.alternatorLimit(Current.valueOf("60 A")).si()).isCloseTo(72, within(1e-9)); // 33 CFR 183.460(b), from memory
        assertThat(OvercurrentDevice.alternatorLimit(Current.valueOf("110 A")).si()).isCloseTo(132, within(1e-9)); // 33 CFR 183.460(b), from memory
    }
}
