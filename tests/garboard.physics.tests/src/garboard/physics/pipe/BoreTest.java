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
import garboard.quantity.Area;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.Speed;
import garboard.quantity.VolumeFlow;

class BoreTest {

    // geometry of the circle, recomputed independently: area, content of a metre and a foot, flow at three velocities
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # bore   | area         | of 1 m  | of 1 ft    | at 1.0 m/s  | at 1.5 m/s   | at 2.0 m/s
            12.7 mm  | 126.7 mm2    | 0.127 L | 0.0102 gal | 7.6 L/min   | 11.4 L/min   | 15.2 L/min
            15.875 mm | 197.9 mm2   | 0.198 L | 0.0159 gal | 11.9 L/min  | 17.8 L/min   | 23.8 L/min
            19.05 mm | 285.0 mm2    | 0.285 L | 0.0229 gal | 17.1 L/min  | 25.7 L/min   | 34.2 L/min
            25.4 mm  | 506.7 mm2    | 0.507 L | 0.0408 gal | 30.4 L/min  | 45.6 L/min   | 60.8 L/min
            31.75 mm | 791.7 mm2    | 0.792 L | 0.0637 gal | 47.5 L/min  | 71.3 L/min   | 95.0 L/min
            38.1 mm  | 1140.1 mm2   | 1.140 L | 0.0918 gal | 68.4 L/min  | 102.6 L/min  | 136.8 L/min
            41.275 mm | 1338.0 mm2  | 1.338 L | 0.1077 gal | 80.3 L/min  | 120.4 L/min  | 160.6 L/min
            50.8 mm  | 2026.8 mm2   | 2.027 L | 0.1632 gal | 121.6 L/min | 182.4 L/min  | 243.2 L/min
            63.5 mm  | 3166.9 mm2   | 3.167 L | 0.2550 gal | 190.0 L/min | 285.0 L/min  | 380.0 L/min
            76.2 mm  | 4560.4 mm2   | 4.560 L | 0.3672 gal | 273.6 L/min | 410.4 L/min  | 547.2 L/min
            88.9 mm  | 6207.2 mm2   | 6.207 L | 0.4998 gal | 372.4 L/min | 558.6 L/min  | 744.9 L/min
            101.6 mm | 8107.3 mm2   | 8.107 L | 0.6528 gal | 486.4 L/min | 729.7 L/min  | 972.9 L/min
            127.0 mm | 12667.7 mm2  | 12.668 L| 1.0200 gal | 760.1 L/min | 1140.1 L/min | 1520.1 L/min
            """)
    void reckonsAreaContentAndFlow(String bore, String area, String metre, String foot, String slow, String middle, String fast) {
        Length diameter = Length.valueOf(bore);
        assertPrinted(area, Bore.area(diameter));
        assertPrinted(metre, Bore.content(PipeRun.ofBore(diameter).withLength(Length.of(1))));
        assertPrinted(foot, Bore.content(PipeRun.ofBore(diameter).withLength(Length.valueOf("1 ft"))));
        assertPrinted(slow, Bore.flow(Speed.of(1.0), diameter));
        assertPrinted(middle, Bore.flow(Speed.of(1.5), diameter));
        assertPrinted(fast, Bore.flow(Speed.of(2.0), diameter));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # flow     | bore     | velocity, recomputed independently from v = 4 Q / (pi D^2)
            24.5 L/min | 19.05 mm | 1.433 m/s
            24.5 L/min | 25.4 mm  | 0.806 m/s
            """)
    void reckonsTheVelocity(String flow, String bore, String velocity) {
        assertPrinted(velocity, Bore.velocity(VolumeFlow.valueOf(flow), Length.valueOf(bore)));
    }

    @Test
    void findsTheBoreForAVelocity() {
        // recomputed independently: sqrt(4 Q / (pi v)) = 18.6 mm for 24.5 L/min at 1.5 m/s
        Length bore = Bore.forVelocity(VolumeFlow.valueOf("24.5 L/min"), Speed.valueOf("1.5 m/s"));
        assertPrinted("18.6 mm", bore);
        assertThat(Bore.velocity(VolumeFlow.valueOf("24.5 L/min"), bore).si()).isCloseTo(1.5, within(1e-12));
        assertThat(Bore.ofArea(Bore.area(bore)).si()).isCloseTo(bore.si(), within(1e-15));
        assertThatThrownBy(() -> Bore.forVelocity(VolumeFlow.of(0), Speed.of(1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Bore.ofArea(Area.of(0))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void goesFromSizeToSize() {
        assertThat(HoseSize.atLeast(Length.valueOf("18.6 mm")).orElseThrow().name()).isEqualTo("3/4 in");
        assertThat(HoseSize.atLeast(Length.valueOf("1 in")).orElseThrow().name()).isEqualTo("1 in");
        assertThat(HoseSize.above(Length.valueOf("1 in")).orElseThrow().name()).isEqualTo("1 1/4 in");
        assertThat(HoseSize.above(Length.valueOf("127 mm"))).isEmpty();
        assertThat(HoseSize.atLeast(Length.valueOf("128 mm"))).isEmpty();
        assertThat(HoseSize.all()).hasSize(13).isSortedAccordingTo(java.util.Comparator.comparing(HoseSize::bore));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # fitting              | K    | low  | high, from engineering tables that cite Crane TP-410 and standard texts
            ENTRANCE_SHARP         | 0.5  | 0.4  | 0.5
            EXIT                   | 1.0  | 1.0  | 1.0
            ELBOW_90               | 0.9  | 0.9  | 1.5
            ELBOW_45               | 0.4  | 0.35 | 0.44
            TEE_BRANCH             | 2.0  | 1.0  | 2.0
            BALL_VALVE_OPEN        | 0.05 | 0.05 | 0.1
            BALL_VALVE_ONE_THIRD_CLOSED | 5.5 | 5.5 | 5.5
            GLOBE_VALVE_OPEN       | 8    | 3    | 10
            STRAINER_CLEAN         | 4    | 2    | 6
            """)
    void knowsTheLossOfFittings(Fitting fitting, String typical, String low, String high) {
        assertPrinted(typical, fitting.loss());
        assertPrinted(low, fitting.leastLoss());
        assertPrinted(high, fitting.greatestLoss());
        assertThat(fitting.status()).isNotNull();
    }

    @Test
    void keepsEachTypicalFigureWithinItsRange() {
        for (Fitting fitting : Fitting.values()) {
            assertThat(fitting.loss().si()).as(fitting.name()).isBetween(fitting.leastLoss().si(), fitting.greatestLoss().si());
        }
        for (Wall wall : Wall.values()) {
            assertThat(wall.roughness().si()).as(wall.name()).isBetween(wall.leastRoughness().si(), wall.greatestRoughness().si());
        }
    }

    @Test
    void knowsTheRoughnessOfWalls() {
        assertPrinted("0.0015 mm", Wall.DRAWN_TUBE_OR_PLASTIC.roughness()); // White, Fluid Mechanics, Table 6.1: drawn tubing 0.0015 mm
        assertPrinted("0.15 mm", Wall.GALVANISED_IRON.roughness()); // White, Fluid Mechanics, Table 6.1: galvanized iron 0.15 mm
        assertPrinted("0.26 mm", Wall.CAST_IRON_NEW.roughness()); // White, Fluid Mechanics, Table 6.1: cast iron 0.26 mm
    }

    @Test
    void knowsBendsAsLengths() {
        // trade figures for exhaust piping (33 and 20 bores), Gerr, Boat Mechanical Systems Handbook, Table 19-2 (30 bores)
        assertPrinted("1.65 m", EquivalentLength.EXHAUST_STANDARD_90.length(Length.valueOf("50 mm")));
        assertPrinted("1.27 m", EquivalentLength.EXHAUST_LONG_90.length(Length.valueOf("63.5 mm")));
        assertPrinted("0.762 m", EquivalentLength.WATER_ELBOW_90.length(Length.valueOf("25.4 mm")));
        assertPrinted("2.65 m", PipeRun.ofBore(Length.valueOf("50 mm")).withLength(Length.of(1)).plus(1, EquivalentLength.EXHAUST_STANDARD_90)
            .length());
        assertThat(EquivalentLength.WATER_TEE_BRANCH.inBores().si()).isEqualTo(60); // Gerr, Table 19-2
    }

    @Test
    void reckonsChangesOfBore() {
        // Borda and Carnot, recomputed independently: d/D = 0.9 gives (1 - 0.81)^2 = 0.0361 and 0.5 (1 - 0.81) = 0.095
        var barb = new ChangeOfBore.Step(Length.valueOf("22.86 mm"), Length.valueOf("25.4 mm"));
        assertPrinted("0.0361", ChangeOfBore.expansion(barb));
        assertPrinted("0.095", ChangeOfBore.contraction(barb));
        assertThat(ChangeOfBore.expansion(new ChangeOfBore.Step(Length.of(1e-6), Length.of(1))).si()).isCloseTo(1, within(1e-9)); // exit
        assertThatThrownBy(() -> new ChangeOfBore.Step(Length.of(2), Length.of(1))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void addsFittingsUp() {
        PipeRun run = PipeRun.ofBore(Length.valueOf("1 in")).plus(2, Fitting.ELBOW_90).plus(1, Fitting.EXIT).plusLoss(Ratio.of(0.2));
        assertThat(run.minorLoss().si()).isCloseTo(3.0, within(1e-12));
        assertThatThrownBy(() -> run.plus(0, Fitting.EXIT)).isInstanceOf(OutOfRangeException.class).hasMessageContaining("count");
    }
}
