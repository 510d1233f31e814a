// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import static garboard.physics.PrintedQuantity.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import garboard.physics.OutOfRangeException;
import garboard.physics.Printed;
import garboard.physics.fuel.Combustion;
import garboard.physics.pipe.Bore;
import garboard.physics.pipe.EquivalentLength;
import garboard.physics.pipe.PipeLoss;
import garboard.physics.pipe.Wall;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.MassFlow;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.Temperature;
import garboard.quantity.VolumeFlow;

class BackPressureTest {

    // Worked example, recomputed independently from the formulas named at each figure: 20 kW diesel set, alternator 0.89, 250 g/kWh, AFR 22
    static final Power SHAFT = Combustion.shaftPower(Power.valueOf("20 kW"), Ratio.of(0.89));
    static final Combustion DIESEL = new Combustion(SHAFT, SpecificConsumption.valueOf("250 g/kWh"), Ratio.of(22));
    static final ExhaustSection DRY = ExhaustSection.of(Length.valueOf("50 mm"), Temperature.valueOf("450 degC"))
        .withStraight(Length.valueOf("0.30 m")).plus(1, EquivalentLength.EXHAUST_STANDARD_90);
    static final ExhaustSection WET = ExhaustSection.of(Length.valueOf("63.5 mm"), Temperature.valueOf("60 degC"))
        .withStraight(Length.valueOf("3.0 m")).plus(3, EquivalentLength.EXHAUST_LONG_90);

    @Test
    void reckonsTheGasOfTheExample() {
        assertPrinted("22.47 kW", SHAFT); // 20 / 0.89
        assertPrinted("5.618 kg/h", DIESEL.fuelFlow()); // P BSFC
        assertPrinted("0.03589 kg/s", DIESEL.exhaustFlow()); // P BSFC (1 + AFR)
        assertPrinted("0.48683 kg/m3", DRY.density()); // 352.05 / 723.15
        assertPrinted("4.4236 m3/min", DRY.volumeFlow(DIESEL.exhaustFlow()));
        assertPrinted("156.22 ft3/min", DRY.volumeFlow(DIESEL.exhaustFlow()));
        assertPrinted("1.95 m", DRY.effectiveLength()); // 0.30 + 33 x 0.050
        assertPrinted("6.398 ft", DRY.effectiveLength());
        assertPrinted("1.05673 kg/m3", WET.density()); // 352.05 / 333.15
        assertPrinted("2.0379 m3/min", WET.volumeFlow(DIESEL.exhaustFlow()));
        assertPrinted("6.81 m", WET.effectiveLength()); // 3.0 + 3 x 20 x 0.0635
        assertPrinted("37.5 m/s", Bore.velocity(DRY.volumeFlow(DIESEL.exhaustFlow()), DRY.bore()));
    }

    @Test
    void reckonsTheLossOfTheExample() {
        MassFlow gas = DIESEL.exhaustFlow();
        assertPrinted("0.2140 kPa", BackPressure.loss(DRY, gas)); // 3.6e6 L S Q^2 / D^5
        assertPrinted("0.8591 inH2O", BackPressureForm.INCH.loss(DRY, DRY.volumeFlow(gas))); // L S Q^2 / (187 D^5)
        assertPrinted("0.1042 kPa", BackPressure.loss(WET, gas));
        assertPrinted("0.2084 kPa", TwoPhaseFlow.wetLoss(BackPressure.loss(WET, gas), TwoPhaseFlow.USUAL_MULTIPLIER));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # bore   | loss of the wet part, recomputed independently with the metric form
            38.1 mm | 1.040 kPa
            50.8 mm | 0.282 kPa
            63.5 mm | 0.104 kPa
            76.2 mm | 0.0466 kPa
            """)
    void fallsSteeplyWithTheBore(String bore, String loss) {
        assertPrinted(loss, BackPressure.loss(WET.withBore(Length.valueOf(bore)), DIESEL.exhaustFlow()));
    }

    @Test
    void reckonsASmallGasolineSet() {
        // recomputed independently with the metric form: 8.125 kW at the shaft, 360 g/kWh, AFR 14
        Combustion gasoline = new Combustion(Power.valueOf("8.125 kW"), SpecificConsumption.valueOf("360 g/kWh"), Ratio.of(14));
        assertPrinted("0.01219 kg/s", gasoline.exhaustFlow());
        ExhaustSection dry = ExhaustSection.of(Length.valueOf("38 mm"), Temperature.valueOf("600 degC")).withStraight(Length.valueOf("1.504 m"));
        assertPrinted("0.0906 kPa", BackPressure.loss(dry, gasoline.exhaustFlow()));
        ExhaustSection wet = ExhaustSection.of(Length.valueOf("38.1 mm"), Temperature.valueOf("55 degC")).withStraight(Length.valueOf("3.524 m"));
        assertPrinted("0.0788 kPa", BackPressure.loss(wet, gasoline.exhaustFlow()));
    }

    @Test
    void reckonsThePublishedPascalExample() {
        // published example of the pascal form: 50 m, 218 m3/min, 14 in, 500 degC: 949 Pa printed; 949.1 recomputed; 685 Pa by the metric form
        ExhaustSection run = ExhaustSection.of(Length.valueOf("14 in"), Temperature.valueOf("500 degC")).withStraight(Length.valueOf("50 m"));
        VolumeFlow flow = VolumeFlow.valueOf("218 m3/min");
        assertPrinted("949 Pa", BackPressureForm.PASCAL.loss(run, flow));
        assertPrinted("949.1 Pa", BackPressureForm.PASCAL.loss(run, flow));
        assertPrinted("685 Pa", BackPressureForm.METRIC.loss(run, flow));
    }

    @Test
    void reckonsThePublishedInchExample() {
        // published example of the inch form: 1500 cfm, 70 F, 6 in, 247.56 ft with bends: 29.73 inH2O printed, 29.734 recomputed;
        // 28.62 by the 187 form, 28.63 by the metric form
        ExhaustSection run = ExhaustSection.of(Length.valueOf("6 in"), Temperature.valueOf("70 degF")).withStraight(Length.valueOf("247.56 ft"));
        VolumeFlow flow = VolumeFlow.valueOf("1500 cfm");
        assertPrinted("29.73 inH2O", BackPressureForm.INCH_BY_TEMPERATURE.loss(run, flow));
        assertPrinted("29.734 inH2O", BackPressureForm.INCH_BY_TEMPERATURE.loss(run, flow));
        assertPrinted("28.62 inH2O", BackPressureForm.INCH.loss(run, flow));
        assertPrinted("28.63 inH2O", BackPressureForm.METRIC.loss(run, flow));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # form              | friction factor that makes it Darcy's law, recomputed independently
            METRIC              | 0.0160
            INCH                | 0.0160
            PASCAL              | 0.022
            INCH_BY_TEMPERATURE | 0.0166
            """)
    void isDarcysLawWithAFixedFactor(BackPressureForm form, String factor) {
        // at 450 degC with 352.05 / T for the density; f = dp D / (L rho v^2 / 2)
        VolumeFlow flow = DRY.volumeFlow(DIESEL.exhaustFlow());
        double velocity = Bore.velocity(flow, DRY.bore()).si();
        double dynamic = DRY.density().si() * velocity * velocity / 2;
        double implied = form.loss(DRY, flow).si() * DRY.bore().si() / (DRY.effectiveLength().si() * dynamic);
        Printed.assertPrinted(factor, implied);
    }

    @ParameterizedTest
    @EnumSource(BackPressureForm.class)
    void everyFormGrowsWithLengthFlowAndShrinksWithBore(BackPressureForm form) {
        VolumeFlow flow = VolumeFlow.valueOf("4 m3/min");
        double loss = form.loss(DRY, flow).si();
        assertThat(form.loss(DRY, VolumeFlow.valueOf("8 m3/min")).si()).isCloseTo(4 * loss, within(1e-9 * loss));
        ExhaustSection straight = DRY.plusBends(Ratio.of(-33));
        assertThat(form.loss(straight.withBore(Length.valueOf("100 mm")), flow).si() * 32)
            .isCloseTo(form.loss(straight, flow).si(), within(1e-9 * loss));
        assertThat(form.loss(DRY, VolumeFlow.of(0)).si()).isZero();
        assertThatThrownBy(() -> form.loss(DRY, VolumeFlow.of(-1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> form.loss(ExhaustSection.of(DRY.bore(), Temperature.valueOf("1000 degC")), flow))
            .isInstanceOf(OutOfRangeException.class).hasMessageContaining("gas temperature");
        assertThat(form.source().citation()).isNotBlank();
    }

    @Test
    void reckonsARoughPipeByDarcy() {
        // recomputed independently with Colebrook for commercial steel, 0.045 mm: f 0.0262 and 0.351 kPa, against 0.214 by the handy form
        PipeLoss loss = BackPressure.darcy(DRY, DIESEL.exhaustFlow(), Wall.COMMERCIAL_STEEL.roughness());
        assertPrinted("0.0262", loss.frictionFactor());
        assertPrinted("0.351 kPa", loss.total());
    }

    @Test
    void findsTheLeastBore() {
        Length least = BackPressure.leastBore(WET, DIESEL.exhaustFlow(), PressureDifference.valueOf("0.2 kPa"));
        assertThat(BackPressure.loss(WET.withBore(least), DIESEL.exhaustFlow()).si()).isLessThanOrEqualTo(200).isCloseTo(200, within(0.001));
        // the bore sweep turned round: 1.040 kPa at 38.1 mm
        assertPrinted("38.1 mm", BackPressure.leastBore(WET, DIESEL.exhaustFlow(), PressureDifference.valueOf("1.040 kPa")));
        assertThatThrownBy(() -> BackPressure.leastBore(WET, MassFlow.of(0), PressureDifference.of(1))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void callsForALookAtAQuarterOverTheBaseline() {
        assertPrinted("5.0 kPa", BackPressure.actionAt(GaugePressure.valueOf("4.0 kPa"))); // common practice: a rise of 25 %
    }
}
