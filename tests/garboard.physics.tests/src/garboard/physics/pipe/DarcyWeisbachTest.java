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
import garboard.physics.Printed;
import garboard.quantity.Density;
import garboard.quantity.KinematicViscosity;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Speed;
import garboard.quantity.Temperature;
import garboard.quantity.VolumeFlow;

class DarcyWeisbachTest {

    // The textbooks reckon with 32.2 ft/s2 and 9.81 m/s2; their heads are held to with that gravity, not with the standard one.
    private static final double GRAVITY_FT = 32.2 * 0.3048;
    private static final double GRAVITY_M = 9.81;

    /** Sea water at 25 degC as the suction examples take it. */
    private static final Fluid SEA = new Fluid(Density.of(1023.3), KinematicViscosity.of(9.37e-7));
    private static final VolumeFlow SUCTION_FLOW = VolumeFlow.valueOf("24.5 L/min");

    @Test
    void reckonsMoodysExample() {
        // Moody 1944, also White, Fluid Mechanics, Ex. 6.6: 0.5 ft, 0.0004 ft, 6 ft/s, 200 ft, 1.1e-5 ft2/s: hf 4.5 ft printed with a factor of
        // 0.02 from the chart; 4.435 ft and, for 62.4 lbf/ft3, 276.7 lbf/ft2 recomputed with Colebrook
        PipeRun run = run("0.5 ft", "200 ft", "0.0004 ft");
        Fluid water = new Fluid(Density.of(62.4 / 32.2 * 32.17405, "lb/ft3"), KinematicViscosity.valueOf("1.1e-5 ft2/s"));
        PipeLoss loss = DarcyWeisbach.loss(run, Bore.flow(Speed.valueOf("6 ft/s"), run.bore()), water);
        assertPrinted("272727", loss.reynolds());
        assertPrinted("4.435 ft", head(loss, GRAVITY_FT));
        assertPrinted("276.7 lbf/ft2", loss.total());
    }

    @Test
    void reckonsWhitesOilLine() {
        // White, Fluid Mechanics, Ex. 6.7: 900 kg/m3, 1e-5 m2/s, 0.2 m3/s, 200 mm, 0.26 mm, 500 m: hf 117 m printed (result from memory);
        // Re 127324 and hf 117.35 m recomputed with Colebrook
        Fluid oil = new Fluid(Density.of(900), KinematicViscosity.of(1e-5));
        PipeLoss loss = DarcyWeisbach.loss(run("200 mm", "500 m", "0.26 mm"), VolumeFlow.valueOf("0.2 m3/s"), oil);
        assertPrinted("127324", loss.reynolds());
        assertPrinted("117 m", loss.head());
        assertPrinted("117.35 m", head(loss, GRAVITY_M));
    }

    @Test
    void findsTheFlowForAHead() {
        // White, Fluid Mechanics, Ex. 6.9: hf 4.5 ft, 0.5 ft, 200 ft, 0.0008, 1.1e-5 ft2/s: V 6.046 ft/s printed, after an iteration that stopped
        // at f 0.01982; V 6.0453 ft/s, Re 274787 and f 0.019824 recomputed with Colebrook
        PipeRun run = run("0.5 ft", "200 ft", "0.0004 ft");
        Fluid water = new Fluid(Density.of(998), KinematicViscosity.valueOf("1.1e-5 ft2/s"));
        VolumeFlow flow = DarcyWeisbach.flowFor(run, PressureDifference.of(998 * GRAVITY_FT * 4.5 * 0.3048), water);
        assertPrinted("6.0453 ft/s", Bore.velocity(flow, run.bore()));
        assertPrinted("274787", DarcyWeisbach.loss(run, flow, water).reynolds());
        assertPrinted("0.019824", DarcyWeisbach.loss(run, flow, water).frictionFactor());
        VolumeFlow standard = DarcyWeisbach.flowFor(run, Length.valueOf("4.5 ft"), water);
        assertThat(DarcyWeisbach.loss(run, standard, water).head().in("ft")).isCloseTo(4.5, within(1e-9));
    }

    @Test
    void reckonsCengelsExample() {
        // Cengel and Cimbala, Fluid Mechanics, Ex. 8-3 (inputs retrieved, result from memory): 62.36 lbm/ft3, 7.536e-4 lbm/(ft s), 0.2 ft3/s,
        // 2 in, relative roughness 4.2e-5, 200 ft: 9.17 ft/s, 0.0174, 1700 lbf/ft2 = 11.8 psi, 27.3 ft, 461 W; Re 126432 recomputed
        Fluid water = new Fluid(Density.valueOf("62.36 lb/ft3"), KinematicViscosity.of(7.536e-4 / 62.36, "ft2/s"));
        PipeRun run = PipeRun.ofBore(Length.valueOf("2 in")).withLength(Length.valueOf("200 ft")).withRoughness(Length.of(4.2e-5 * 2, "in"));
        VolumeFlow flow = VolumeFlow.of(0.2 * 60, "ft3/min");
        PipeLoss loss = DarcyWeisbach.loss(run, flow, water);
        assertPrinted("9.17 ft/s", loss.velocity());
        assertPrinted("9.167 ft/s", loss.velocity());
        assertPrinted("126432", loss.reynolds());
        assertPrinted("0.0174", loss.frictionFactor());
        assertPrinted("1700 lbf/ft2", loss.total());
        assertPrinted("11.8 psi", loss.total());
        assertPrinted("27.3 ft", loss.head());
        Printed.assertPrinted("461", loss.total().si() * flow.si()); // W
    }

    @Test
    void reckonsTheWavePlanExample() {
        // Surge Analysis and the Wave Plan Method, ch. 0, problem 0.2: 0.3 m, 0.12 mm, 2 m/s, 6 m, Re 599993: 0.06867 m recomputed, Colebrook
        PipeRun run = run("0.3 m", "6 m", "0.12 mm");
        Fluid water = new Fluid(Density.of(998), KinematicViscosity.of(2 * 0.3 / 599993));
        assertPrinted("0.06867 m", head(DarcyWeisbach.loss(run, Bore.flow(Speed.of(2), run.bore()), water), GRAVITY_M));
        // 0.0689 m printed, with the explicit factor rounded to 0.0169; 0.06910 m recomputed with it unrounded
        double explicit = FrictionFactor.swameeJain(Ratio.of(599993), Ratio.of(0.0004)).si();
        assertPrinted("0.06910 m", Length.of(explicit * 6 / 0.3 * 2 * 2 / (2 * GRAVITY_M)));
    }

    // recomputed independently from Darcy and Colebrook: 24.5 L/min of sea water, 2.5 m, K = 0.5 + 0.1 + 2 x 0.75 + 4.0 + 0.1 = 6.2
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # bore   | wall    | Re    | f       | friction | minor    | total
            19.05 mm | 0.05 mm | 29127 | 0.02939 | 0.4036 m | 0.6488 m | 1.052 m
            25.4 mm  | 0.05 mm | 21845 | 0.02933 | 0.0956 m | 0.2053 m | 0.301 m
            25.4 mm  | 1 mm    | 21845 | 0.0654  | 0.213 m  | 0.2053 m | 0.418 m
            """)
    void reckonsASuctionLine(String bore, String wall, String reynolds, String factor, String friction, String minor, String total) {
        PipeLoss loss = DarcyWeisbach.loss(run(bore, "2.5 m", wall).plusLoss(Ratio.of(6.2)), SUCTION_FLOW, SEA);
        assertPrinted(reynolds, loss.reynolds());
        assertPrinted(factor, loss.frictionFactor());
        assertPrinted(friction, loss.frictionHead());
        assertPrinted(minor, loss.minorHead());
        assertPrinted(total, loss.head());
    }

    @Test
    void losesNothingWhereNothingFlows() {
        PipeLoss still = DarcyWeisbach.loss(run("20 mm", "1 m", "0 mm"), VolumeFlow.of(0), SEA);
        assertThat(still.total().si()).isZero();
        assertThat(still.regime()).isEqualTo(Reynolds.Regime.LAMINAR);
    }

    @Test
    void findsTheLeastBoreThatKeepsToALoss() {
        PipeRun run = run("1 m", "2.5 m", "0.05 mm").plusLoss(Ratio.of(6.2));
        for (String most : new String[] {"10 kPa", "3 kPa", "500 Pa"}) {
            PressureDifference limit = PressureDifference.valueOf(most);
            Length least = DarcyWeisbach.leastBore(run, SUCTION_FLOW, limit, SEA);
            assertThat(DarcyWeisbach.loss(run.withBore(least), SUCTION_FLOW, SEA).total().si()).isLessThanOrEqualTo(limit.si());
            assertThat(DarcyWeisbach.loss(run.withBore(Length.of(least.si() * 0.9999)), SUCTION_FLOW, SEA).total().si())
                .isGreaterThan(limit.si());
        }
        // the first row of the suction table turned round
        Length turned = DarcyWeisbach.leastBore(run, SUCTION_FLOW, Hydrostatics.pressure(SEA.density(), Length.valueOf("1.0524 m")), SEA);
        assertPrinted("19.05 mm", turned);
        assertThatThrownBy(() -> DarcyWeisbach.leastBore(run, VolumeFlow.of(100), PressureDifference.of(1), SEA))
            .isInstanceOf(OutOfRangeException.class).hasMessageContaining("pressure loss");
    }

    @Test
    void findsTheLongestRun() {
        PipeRun run = run("19.05 mm", "0 m", "0.05 mm").plusLoss(Ratio.of(6.2));
        PressureDifference limit = PressureDifference.valueOf("10 kPa");
        Length longest = DarcyWeisbach.greatestLength(run, SUCTION_FLOW, limit, SEA);
        assertThat(DarcyWeisbach.loss(run.withLength(longest), SUCTION_FLOW, SEA).total().si()).isCloseTo(10_000, within(1e-6));
        assertThat(DarcyWeisbach.greatestLength(run, SUCTION_FLOW, PressureDifference.valueOf("1 kPa"), SEA).si()).isZero();
    }

    @Test
    void answersALossInsideTheJumpWithTheFlowAtTheCriticalReynoldsNumber() {
        Fluid diesel = Medium.DIESEL.at(Temperature.valueOf("15 degC"));
        PipeRun run = run("8 mm", "4 m", "0 mm");
        VolumeFlow critical = VolumeFlow.of(2300 * diesel.viscosity().si() / 0.008 * Bore.area(run.bore()).si());
        double laminar = DarcyWeisbach.loss(run, VolumeFlow.of(critical.si() * 0.99999), diesel).total().si();
        double turbulent = DarcyWeisbach.loss(run, VolumeFlow.of(critical.si() * 1.00001), diesel).total().si();
        assertThat(turbulent).isGreaterThan(1.3 * laminar);
        VolumeFlow found = DarcyWeisbach.flowFor(run, PressureDifference.of((laminar + turbulent) / 2), diesel);
        assertThat(found.si()).isCloseTo(critical.si(), within(critical.si() * 1e-6));
        assertThatThrownBy(() -> DarcyWeisbach.flowFor(run, PressureDifference.valueOf("100000 bar"), diesel))
            .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void losesMoreWithMoreFlowLengthAndRoughnessAndLessWithMoreBore() {
        PipeRun run = run("25 mm", "3 m", "0.03 mm").plus(2, Fitting.ELBOW_90);
        double loss = DarcyWeisbach.loss(run, SUCTION_FLOW, SEA).total().si();
        assertThat(DarcyWeisbach.loss(run, VolumeFlow.valueOf("25 L/min"), SEA).total().si()).isGreaterThan(loss);
        assertThat(DarcyWeisbach.loss(run.withLength(Length.of(4)), SUCTION_FLOW, SEA).total().si()).isGreaterThan(loss);
        assertThat(DarcyWeisbach.loss(run.withRoughness(Wall.RUBBER_HOSE_WIRE_REINFORCED_ROUGH_BORE), SUCTION_FLOW, SEA).total().si())
            .isGreaterThan(loss);
        assertThat(DarcyWeisbach.loss(run.withBore(Length.valueOf("26 mm")), SUCTION_FLOW, SEA).total().si()).isLessThan(loss);
    }

    @Test
    void refusesARunThatIsNone() {
        assertThatThrownBy(() -> run("0 mm", "1 m", "0 mm")).isInstanceOf(OutOfRangeException.class)
            .hasMessage("bore is 0 mm, but has to be more than 0");
        assertThatThrownBy(() -> run("1 mm", "-1 m", "0 mm")).isInstanceOf(OutOfRangeException.class).hasMessageContaining("length");
        assertThatThrownBy(() -> DarcyWeisbach.loss(run("10 mm", "1 m", "1 mm"), SUCTION_FLOW, SEA)).isInstanceOf(OutOfRangeException.class)
            .hasMessageContaining("relative roughness");
    }

    private static Length head(PipeLoss loss, double gravity) {
        return Length.of(loss.total().si() / (loss.fluid().density().si() * gravity));
    }

    private static PipeRun run(String bore, String length, String wall) {
        return PipeRun.ofBore(Length.valueOf(bore)).withLength(Length.valueOf(length)).withRoughness(Length.valueOf(wall));
    }
}
