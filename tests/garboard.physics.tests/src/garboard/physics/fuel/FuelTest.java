// SPDX-License-Identifier: EPL-2.0
package garboard.physics.fuel;

import static garboard.physics.PrintedQuantity.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.physics.Printed;
import garboard.physics.pipe.Fluid;
import garboard.physics.pipe.PipeRun;
import garboard.physics.pipe.PressureBudget;
import garboard.quantity.Density;
import garboard.quantity.GaugePressure;
import garboard.quantity.KinematicViscosity;
import garboard.quantity.Length;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

class FuelTest {

    private static final Density DIESEL = Density.of(840);
    private static final Density GASOLINE = Density.of(745);

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # kind                 | shaft    | flow        | source
            DIESEL                 | 22.47 kW | 20.53 L/h   | filter trade council, 0.18 gph/hp
            DIESEL                 | 22.47 kW | 5.42 gal/h  | filter trade council, 0.18 gph/hp
            DIESEL                 | 10 kW    | 9.14 L/h    | filter trade council, 0.18 gph/hp
            DIESEL                 | 1 kW     | 0.9137 L/h  | filter trade council, 0.18 gph/hp
            GASOLINE_WITHOUT_RETURN | 8.125 kW | 4.12 L/h   | filter trade council, 0.10 gph/hp
            GASOLINE_WITHOUT_RETURN | 1 kW    | 0.5076 L/h  | filter trade council, 0.10 gph/hp
            """)
    void ratesASeparator(SeparatorFlow kind, String shaft, String flow, String source) {
        assertPrinted(flow, kind.least(Power.valueOf(shaft)));
    }

    @Test
    void ratesADieselSeparatorByGerr() {
        assertPrinted("1.0 gal/min", SeparatorFlow.dieselByGerr(Power.valueOf("600 hp"))); // Gerr, Boat Mechanical Systems Handbook: hp / 600
    }

    @Test
    void reckonsTheBurn() {
        // recomputed independently: P BSFC / rho; Gerr, Boat Mechanical Systems Handbook: 0.054 gal/hp-h = 0.274 L/kWh
        Combustion diesel = new Combustion(Power.of(20 / 0.89, "kW"), SpecificConsumption.valueOf("250 g/kWh"), Ratio.of(22));
        assertPrinted("6.69 L/h", FuelEndurance.burn(diesel, DIESEL));
        assertPrinted("6.16 L/h", FuelEndurance.dieselBurnByGerr(Power.valueOf("22.47 kW")));
        assertPrinted("0.274 L/h", FuelEndurance.dieselBurnByGerr(Power.valueOf("1 kW")));
        Combustion gasoline = new Combustion(Power.valueOf("8.125 kW"), SpecificConsumption.valueOf("360 g/kWh"), Ratio.of(14));
        assertPrinted("3.93 L/h", FuelEndurance.burn(gasoline, GASOLINE));
        assertPrinted("66.64 kW", diesel.fuelPower(TypicalEngine.DIESEL_NATURALLY_ASPIRATED.heatingValue())); // m LHV, recomputed independently
        assertPrinted("34.94 kW", gasoline.fuelPower(TypicalEngine.GASOLINE_INJECTED.heatingValue())); // m LHV, recomputed independently
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # tank | burn     | hours at 0.90 usable, recomputed independently
            200 L | 6.69 L/h | 26.9 h
            75 L  | 3.93 L/h | 17.2 h
            """)
    void reckonsTheEndurance(String tank, String burn, String hours) {
        TimeSpan lasts = FuelEndurance.lasts(Volume.valueOf(tank), FuelEndurance.USUAL_USABLE, VolumeFlow.valueOf(burn));
        assertPrinted(hours, lasts);
        var shares = FuelEndurance.Shares.usual().withReserve(Ratio.of(0));
        assertThat(FuelEndurance.leastTank(lasts, VolumeFlow.valueOf(burn), shares).in("L"))
            .isCloseTo(Volume.valueOf(tank).in("L"), within(1e-9));
    }

    @Test
    void addsAReserveToTheTank() {
        // recomputed independently: 10 h x 1.2 x 6.69 L/h / 0.9 = 89.2 L
        assertPrinted("89.2 L", FuelEndurance.leastTank(TimeSpan.valueOf("10 h"), VolumeFlow.valueOf("6.69 L/h"), FuelEndurance.Shares.usual()));
        assertThatThrownBy(() -> FuelEndurance.Shares.usual().withUsable(Ratio.of(1.1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> FuelEndurance.Shares.usual().withUsable(Ratio.of(0))).isInstanceOf(OutOfRangeException.class);
    }

    // rho g h, recomputed independently
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # density | height | pressure
            840 kg/m3 | 1 m   | 8.238 kPa
            840 kg/m3 | 1 m   | 2.433 inHg
            840 kg/m3 | 1 ft  | 0.741 inHg
            745 kg/m3 | 1 m   | 7.306 kPa
            745 kg/m3 | 1 m   | 2.157 inHg
            745 kg/m3 | 0.3 m | 2.19 kPa
            745 kg/m3 | 0.5 m | 3.65 kPa
            745 kg/m3 | 0.5 m | 14.7 inH2O
            745 kg/m3 | 0.5 m | 1.08 inHg
            840 kg/m3 | 0.8 m | 6.59 kPa
            """)
    void reckonsHeadsOfFuel(String density, String height, String pressure) {
        assertPrinted(pressure, FuelLine.head(Density.valueOf(density), Length.valueOf(height)));
    }

    // 128 mu L Q / (pi D^4), recomputed independently
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # flow     | length | bore | density   | viscosity | drop
            20.6 L/h | 4 m | 8 mm | 840 kg/m3 | 4.5 cSt | 861 Pa
            20.6 L/h | 4 m | 8 mm | 860 kg/m3 | 8 cSt   | 1566 Pa
            20.6 L/h | 4 m | 6 mm | 840 kg/m3 | 4.5 cSt | 2720 Pa
            3.93 L/h | 3 m | 8 mm | 745 kg/m3 | 0.6 cSt | 14.6 Pa
            """)
    void reckonsTheDropOfALine(String flow, String length, String bore, String density, String viscosity, String drop) {
        Fluid fuel = new Fluid(Density.valueOf(density), KinematicViscosity.valueOf(viscosity));
        PipeRun run = PipeRun.ofBore(Length.valueOf(bore)).withLength(Length.valueOf(length));
        PressureDifference laminar = FuelLine.laminarDrop(run, VolumeFlow.valueOf(flow), fuel);
        assertPrinted(drop, laminar);
        assertThat(FuelLine.drop(run, VolumeFlow.valueOf(flow), fuel).si()).isCloseTo(laminar.si(), within(1e-9 * laminar.si()));
        Length least = FuelLine.leastBore(run, VolumeFlow.valueOf(flow), laminar, fuel);
        assertThat(least.si()).isCloseTo(run.bore().si(), within(1e-8));
    }

    @Test
    void refusesTheLaminarFormulaForTurbulentFlow() {
        Fluid fuel = new Fluid(GASOLINE, KinematicViscosity.valueOf("0.6 cSt"));
        PipeRun run = PipeRun.ofBore(Length.valueOf("6 mm")).withLength(Length.valueOf("3 m"));
        assertThatThrownBy(() -> FuelLine.laminarDrop(run, VolumeFlow.valueOf("150 L/h"), fuel)).isInstanceOf(OutOfRangeException.class)
            .hasMessageContaining("Reynolds number");
        assertThat(FuelLine.drop(run, VolumeFlow.valueOf("150 L/h"), fuel).si()).isPositive();
    }

    @Test
    void addsTheSuctionUp() {
        PressureBudget devices = PressureBudget.empty().plus("filter", PressureDifference.valueOf("3 kPa"))
            .plus("anti-siphon valve", PressureDifference.valueOf("2 kPa"));
        PressureBudget suction = FuelLine.suction(DIESEL, Length.valueOf("1 m"), PressureDifference.valueOf("861 Pa"), devices);
        assertPrinted("14.099 kPa", suction.total()); // 8.238 + 0.861 + 3 + 2, recomputed independently
        assertThat(suction.parts()).extracting(PressureBudget.Part::cause).containsExactly("lift", "line", "filter", "anti-siphon valve");
        PressureBudget fed = FuelLine.suction(DIESEL, Length.valueOf("-1 m"), PressureDifference.of(0), PressureBudget.empty());
        assertPrinted("-8.238 kPa", fed.total());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # bore  | working pressure: ISO 7840:2021 and ISO 8469:2021, scope
            6 mm    | 0.34 MPa
            10 mm   | 49.3 psi
            10.1 mm | 0.25 MPa
            3/8 in  | 0.34 MPa
            63 mm   | 36.3 psi
            """)
    void knowsTheWorkingPressureOfHose(String bore, String pressure) {
        assertPrinted(pressure, FuelHose.workingPressure(Length.valueOf(bore)));
    }

    @Test
    void knowsNoWorkingPressureBeyondTheStandard() {
        assertThatThrownBy(() -> FuelHose.workingPressure(Length.valueOf("64 mm"))).isInstanceOf(OutOfRangeException.class)
            .hasMessageContaining("63 mm");
    }

    @Test
    void comparesRailPressuresWithTheHose() {
        // 45 psi is within 0.34 MPa, 50 psi is not: unit conversion against ISO 7840:2021
        GaugePressure hose = FuelHose.workingPressure(Length.valueOf("8 mm"));
        assertThat(GaugePressure.valueOf("45 psi")).isLessThan(hose);
        assertThat(GaugePressure.valueOf("50 psi")).isGreaterThan(hose);
        assertThat(GaugePressure.valueOf("38 psi")).isGreaterThan(FuelHose.workingPressure(Length.valueOf("12 mm")));
    }

    // 33 CFR 183.542: greater of 3 psi and 1.5 x rho g h; heads recomputed independently
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # density | head  | test
            745 kg/m3 | 1.5 m | 20.7 kPa
            745 kg/m3 | 2.2 m | 24.1 kPa
            840 kg/m3 | 2.0 m | 24.7 kPa
            740 kg/m3 | 4 ft  | 3.0000 psi
            740 kg/m3 | 8 ft  | 3.8497 psi
            740 kg/m3 | 10 ft | 4.8122 psi
            """)
    void reckonsTheLeakTest(String density, String head, String test) {
        assertPrinted(test, FuelSystem33Cfr183.leakTest(Density.valueOf(density), Length.valueOf(head)));
    }

    @Test
    void knowsHowFarThreePsiReach() {
        // recomputed independently: 3 psi / (1.5 x 0.32081 psi/ft) = 6.234 ft at a specific gravity of 0.74
        assertPrinted("6.234 ft", FuelSystem33Cfr183.headOfLeastTest(Density.of(740)));
    }

    @Test
    void knowsTheFiguresOfTheRule() {
        // 33 CFR 183.558(b): 5 oz in 2.5 min: 147.87 mL, 59.15 mL/min
        assertPrinted("147.87 mL", FuelSystem33Cfr183.SEVERED_HOSE_LIMIT);
        Printed.assertPrinted("59.15", FuelSystem33Cfr183.severedHoseRate().in("L/min") * 1000);
        assertThat(FuelSystem33Cfr183.severedHosePasses(Volume.valueOf("140 mL"), TimeSpan.valueOf("150 s"))).isTrue();
        assertThat(FuelSystem33Cfr183.severedHosePasses(Volume.valueOf("5 fl oz"), TimeSpan.valueOf("2.5 min"))).isTrue();
        assertThat(FuelSystem33Cfr183.severedHosePasses(Volume.valueOf("150 mL"), TimeSpan.valueOf("150 s"))).isFalse();
        // 33 CFR 183.564: 5 gal/min for 5 s
        assertPrinted("0.4167 gal", FuelSystem33Cfr183.fillOverflowVolume());
        assertPrinted("53.33 fl oz", FuelSystem33Cfr183.fillOverflowVolume());
        assertPrinted("1.5773 L", FuelSystem33Cfr183.fillOverflowVolume());
        // 33 CFR 183.520 and .514(b)(5): 80 % of the label
        assertPrinted("2.4 psi", FuelSystem33Cfr183.greatestFillingPressure(GaugePressure.valueOf("3.0 psi")));
        assertPrinted("4.0 psi", FuelSystem33Cfr183.greatestFillingPressure(GaugePressure.valueOf("5.0 psi")));
        // laboratory procedure issued with 33 CFR 183.542: 5 min, 1 min for each started 10 gal above 50
        assertPrinted("8 min", FuelSystem33Cfr183.leakTestHold(Volume.valueOf("75 gal")));
        assertPrinted("5 min", FuelSystem33Cfr183.leakTestHold(Volume.valueOf("50 gal")));
        assertPrinted("6 min", FuelSystem33Cfr183.leakTestHold(Volume.valueOf("51 gal")));
        assertPrinted("6 min", FuelSystem33Cfr183.leakTestHold(Volume.valueOf("60 gal")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # spud    | clearance: 33 CFR 183.558(d), Table 8 (from memory)
            0.360 in | 0.020 in
            3/8 in   | 0.035 in
            0.380 in | 0.035 in
            1 in     | 0.035 in
            1.001 in | 0.065 in
            """)
    void knowsHowLooselyAHoseMayFit(String spud, String clearance) {
        assertPrinted(clearance, FuelSystem33Cfr183.greatestHoseClearance(Length.valueOf(spud)));
    }

    @Test
    void knowsTypicalEngines() {
        // from memory; 7 % radiated: Marine Diesel Basics 1
        assertPrinted("250 g/kWh", TypicalEngine.DIESEL_NATURALLY_ASPIRATED.consumption());
        assertPrinted("0.07", TypicalEngine.DIESEL_NATURALLY_ASPIRATED.radiatedShare());
        assertPrinted("14", TypicalEngine.GASOLINE_INJECTED.airFuelRatio());
        for (TypicalEngine engine : TypicalEngine.values()) {
            assertThat(engine.consumption()).isBetween(engine.leastConsumption(), engine.greatestConsumption());
            assertThat(engine.at(Power.valueOf("10 kW")).exhaustFlow().si()).isPositive();
            assertThat(engine.exhaustTemperature().in("degC")).isBetween(400.0, 700.0);
            assertThat(engine.coolantShare().si() + engine.radiatedShare().si()).isBetween(0.3, 0.4);
        }
    }
}
