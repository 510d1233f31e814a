// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rawwater;

import static garboard.physics.PrintedQuantity.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.physics.geometry.AttitudeEnvelope;
import garboard.physics.geometry.BoatPoint;
import garboard.physics.pipe.DarcyWeisbach;
import garboard.physics.pipe.Fluid;
import garboard.physics.pipe.PipeRun;
import garboard.physics.pipe.SeaWater;
import garboard.quantity.Angle;
import garboard.quantity.Area;
import garboard.quantity.Density;
import garboard.quantity.KinematicViscosity;
import garboard.quantity.Length;
import garboard.quantity.MassFlow;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificHeat;
import garboard.quantity.Speed;
import garboard.quantity.Temperature;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

class RawWaterTest {

    /** Customary figures of the worked examples. */
    private static final CoolingWater SEA = new CoolingWater(Density.of(1025), SpecificHeat.of(3993));

    // m = Phi / (cp dT), recomputed independently with 3.993 kJ/(kg.K) and 1025 kg/m3
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # heat    | rise | flow
            20.0 kW | 12 K | 24.43 L/min
            20.0 kW | 12 K | 6.45 gal/min
            20.0 kW | 8 K  | 36.6 L/min
            20.0 kW | 10 K | 29.3 L/min
            20.0 kW | 15 K | 19.5 L/min
            10.482 kW | 12 K | 12.8 L/min
            """)
    void reckonsTheFlowForAHeat(String heat, String rise, String flow) {
        VolumeFlow needed = SEA.flow(Power.valueOf(heat), TemperatureDifference.valueOf(rise));
        assertPrinted(flow, needed);
        assertThat(SEA.rise(Power.valueOf(heat), needed).si()).isCloseTo(TemperatureDifference.valueOf(rise).si(), within(1e-12));
        assertThat(SEA.heat(needed, TemperatureDifference.valueOf(rise)).si()).isCloseTo(Power.valueOf(heat).si(), within(1e-8));
    }

    @Test
    void takesTheRealPropertiesOfTheSea() {
        CoolingWater warm = CoolingWater.sea(Temperature.valueOf("32 degC"));
        assertPrinted("1021.3 kg/m3", warm.density()); // Sharqawy et al. 2010, recomputed independently
        assertPrinted("4.003 kJ/(kg.K)", warm.specificHeat());
    }

    @Test
    void reckonsTheTemperatureOverboard() {
        // recomputed independently: 20 kW from the coolant, 0.03589 kg/s of gas from 450 to 60 degC at 1.10 kJ/(kg.K), 24.43 L/min, sea 25 degC
        GasCooling gas = GasCooling.from(MassFlow.of(0.03589), Temperature.valueOf("450 degC")).to(Temperature.valueOf("60 degC"));
        assertPrinted("15.4 kW", gas.heat());
        HeatOverboard overboard = HeatOverboard.ofCoolant(Power.valueOf("20 kW"), Temperature.valueOf("25 degC")).withExhaust(gas).withWater(SEA);
        VolumeFlow flow = VolumeFlow.valueOf("24.43 L/min");
        assertPrinted("9.2 K", overboard.elbowRise(flow));
        assertPrinted("46.2 degC", overboard.temperature(flow));
    }

    @Test
    void findsTheLeastFlowForATemperatureOverboard() {
        // recomputed independently with the properties of sea water at 32 degC: 18.6 L/min for 60 degC
        GasCooling gas = GasCooling.from(MassFlow.of(0.03589), Temperature.valueOf("450 degC")).to(Temperature.valueOf("60 degC"));
        HeatOverboard overboard = HeatOverboard.ofCoolant(Power.valueOf("20 kW"), Temperature.valueOf("32 degC")).withExhaust(gas);
        VolumeFlow least = overboard.leastFlow(Temperature.valueOf("60 degC"));
        assertPrinted("18.6 L/min", least);
        assertThat(overboard.temperature(least).in("degC")).isCloseTo(60, within(1e-9));
        assertThatThrownBy(() -> overboard.leastFlow(Temperature.valueOf("32 degC"))).isInstanceOf(OutOfRangeException.class)
            .hasMessageContaining("limit").hasMessageContaining("32 degC");
        assertThatThrownBy(() -> gas.to(Temperature.valueOf("451 degC"))).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # rule         | shaft  | least        | greatest, chandler's guide: 65 to 70 and 36 to 39 L/min for 100 bhp
            HEAT_EXCHANGER | 100 hp | 65.0 L/min   | 70.0 L/min
            DIRECT         | 100 hp | 36.0 L/min   | 39.0 L/min
            HEAT_EXCHANGER | 1 kW   | 0.872 L/min  | 0.939 L/min
            DIRECT         | 1 kW   | 0.483 L/min  | 0.523 L/min
            """)
    void knowsTheTradesFlowForAPower(FlowPerPower rule, String shaft, String least, String greatest) {
        assertPrinted(least, rule.least(Power.valueOf(shaft)));
        assertPrinted(greatest, rule.greatest(Power.valueOf(shaft)));
    }

    @Test
    void addsLiftAndLossToTheSuctionHead() {
        // the suction line of 19.05 mm that loses 1.052 m, recomputed independently from Darcy and Colebrook; pump 0.10 m under the surface
        Fluid sea = new Fluid(Density.of(1023.3), KinematicViscosity.of(9.37e-7));
        PipeRun run = PipeRun.ofBore(Length.valueOf("19.05 mm")).withLength(Length.valueOf("2.5 m")).withRoughness(Length.valueOf("0.05 mm"))
            .plusLoss(Ratio.of(6.2));
        Suction suction = new Suction(DarcyWeisbach.loss(run, VolumeFlow.valueOf("24.5 L/min"), sea), Length.valueOf("-0.10 m"));
        assertPrinted("0.952 m", suction.head());
        assertThat(suction.vacuum().si()).isCloseTo(suction.head().si() * 1023.3 * 9.80665, within(1e-9));
        assertPrinted("0.167 m", suction.greatestLift(Suction.GREATEST_HEAD_BY_GERR)); // 4 ft = 1.2192 m less 1.052 m
        assertThat(suction.greatestLoss(suction.vacuum()).si()).isCloseTo(suction.loss().total().si(), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # speed | head V^2/(2g), recomputed independently
            6 kn  | 0.486 m
            8 kn  | 0.864 m
            10 kn | 1.349 m
            20 kn | 5.397 m
            """)
    void reckonsTheRamOfAScoop(String speed, String head) {
        Length ram = RamHead.at(Speed.valueOf(speed));
        assertPrinted(head, ram);
        assertThat(RamHead.speedFor(ram).si()).isCloseTo(Speed.valueOf(speed).si(), within(1e-12));
    }

    @Test
    void reckonsTheRamAsPressure() {
        assertPrinted("8.68 kPa", RamHead.pressureAt(Speed.valueOf("8 kn"), SeaWater.CUSTOMARY_DENSITY)); // recomputed independently, rho V^2/2
        assertPrinted("54.3 kPa", RamHead.pressureAt(Speed.valueOf("20 kn"), SeaWater.CUSTOMARY_DENSITY)); // recomputed independently
        assertPrinted("15.9 kn", RamHead.speedFor(PressureDifference.valueOf("34.5 kPa"), SeaWater.CUSTOMARY_DENSITY)); // recomputed
        assertThat(RamHead.speedFor(Length.valueOf("0.45 m"))).isLessThan(Speed.valueOf("6 kn")); // a 0.45 m loop, recomputed independently
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # Cd  | flow through 1 in, 3 ft down
            1    | 128.8 L/min | the usual published figure
            1    | 34.0 gal/min | the usual published figure
            0.61 | 78.5 L/min  | Torricelli, recomputed independently
            0.80 | 103 L/min   | Torricelli, recomputed independently
            """)
    void reckonsFlooding(double discharge, String flow, String source) {
        var hole = Flooding.Hole.ofBore(Length.valueOf("25.4 mm")).under(Length.valueOf("3 ft"));
        assertPrinted(flow, Flooding.flow(hole, Ratio.of(discharge)));
    }

    @Test
    void saysHowLongFloodingTakes() {
        VolumeFlow flow = VolumeFlow.valueOf("100 L/min");
        assertPrinted("5.0 min", Flooding.timeFor(Volume.valueOf("500 L"), flow)); // arithmetic
        assertThatThrownBy(() -> Flooding.flow(Flooding.Hole.ofBore(Length.of(0.1)), Ratio.of(1.1))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void reckonsOpenAreas() {
        // twice and three times pi/4 x 25.4^2 = 506.7 mm2, recomputed independently
        assertPrinted("1013 mm2", OpenArea.leastGrating(Length.valueOf("25.4 mm")));
        assertPrinted("1520 mm2", OpenArea.leastBasket(Length.valueOf("25.4 mm")));
        assertThat(OpenArea.greatestBore(OpenArea.leastBasket(Length.valueOf("1 in")), OpenArea.BASKET_TO_HOSE).in("in")).isCloseTo(1, within(1e-12));
        assertThatThrownBy(() -> OpenArea.greatestBore(Area.of(0), Ratio.of(2))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void knowsTheSeacockZones() {
        // Gerr, Boat Mechanical Systems Handbook, ch. 17: LWL/60 and 0.30 m
        assertPrinted("0.30 m", SeacockZone.heightByGerr(Length.valueOf("15 m")));
        assertPrinted("0.35 m", SeacockZone.heightByGerr(Length.valueOf("21 m")));
        // 46 CFR 179.350: lower than 150 mm above the deepest load waterline
        assertThat(SeacockZone.below46Cfr179Line(Length.valueOf("-300 mm"))).isTrue();
        assertThat(SeacockZone.below46Cfr179Line(Length.valueOf("149 mm"))).isTrue();
        assertThat(SeacockZone.below46Cfr179Line(Length.valueOf("150 mm"))).isFalse();
        // a side outlet 100 mm above water at 7 deg, recomputed independently: -0.0714 m
        BoatPoint outlet = BoatPoint.atHeight(Length.valueOf("0.10 m")).withStarboard(Length.valueOf("1.40 m"));
        assertThat(SeacockZone.belowHeeledWaterline(outlet, AttitudeEnvelope.toHeel(Angle.valueOf("7 deg")))).isTrue();
        assertThat(SeacockZone.belowHeeledWaterline(outlet, AttitudeEnvelope.toHeel(Angle.valueOf("4 deg")))).isFalse();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # upright | lowest   | need: common practice, 0.15 m heeled, 0.23 m at rest, advised to 0.30 m
            0.20 m   | 0.1155 m | NEEDED
            0.40 m   | 0.149 m  | NEEDED
            0.40 m   | 0.15 m   | NOT_NEEDED
            0.229 m  | 0.20 m   | NEEDED
            0.23 m   | 0.20 m   | ADVISED
            0.299 m  | 0.20 m   | ADVISED
            0.30 m   | 0.20 m   | NOT_NEEDED
            """)
    void saysWhetherASiphonBreakIsNeeded(String upright, String lowest, SiphonBreakNeed need) {
        var heights = SiphonBreakNeed.Heights.upright(Length.valueOf(upright)).lowest(Length.valueOf(lowest));
        assertThat(SiphonBreakNeed.of(heights)).isEqualTo(need);
    }

    @Test
    void followsAMakersHeightForTheSiphonBreak() {
        var heights = SiphonBreakNeed.Heights.upright(Length.valueOf("0.35 m"));
        assertThat(SiphonBreakNeed.of(heights, Length.valueOf("0.40 m"))).isEqualTo(SiphonBreakNeed.NEEDED);
        assertThat(SiphonBreakNeed.of(heights, Length.valueOf("0.35 m"))).isEqualTo(SiphonBreakNeed.NOT_NEEDED);
    }
}
