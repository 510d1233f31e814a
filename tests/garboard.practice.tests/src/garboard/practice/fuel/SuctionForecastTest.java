// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineRun;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.VolumeFlow;

class SuctionForecastTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelLineRun line = FuelLines.add(record, FuelLineFunction.TANK_TO_ENGINE);

    @BeforeEach
    void fourMetresOfLine() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getFuelSupply().setPumpFlow(VolumeFlow.of(20.6, "L/h"));
        line.setLength(Length.of(4));
    }

    private Judged suction(String bore, String lift) {
        line.setBore(Length.valueOf(bore));
        record.getFuelSupply().getPumpPosition().setZ(Length.valueOf(lift));
        record.getFuelSupply().getTank().setBottomHeight(Length.of(0));
        return judge(SuctionForecast.check(), record);
    }

    @Test
    void liftAndLineAddUp() {
        // recomputed for diesel of 850 kg/m3 and 8 mm2/s: 0.5 m lift 4.168 kPa, 8 mm line 1.548 kPa (Hagen-Poiseuille)
        suction("8 mm", "0.5 m").meets().measured(5.716, "kPa", 0.0005);
        // 1 m lift 8.336 kPa: 9.88 kPa, just below 10 kPa (common practice)
        suction("8 mm", "1 m").meets().measured(9.884, "kPa", 0.0005).limit(10, "kPa", 1e-9);
        suction("8 mm", "1.02 m").fallsShort();
    }

    @Test
    void antiSiphonValveAddsItsOpeningPressure() {
        record.getFuelSupply().setAntiSiphonCrackingPressure(PressureDifference.of(3.65, "kPa"));
        suction("8 mm", "0.5 m").meets().measured(9.366, "kPa", 0.0005);
        assertThat(suction("8 mm", "0.6 m").fallsShort().verdict().sentence()).contains("anti-siphon valve 3.65 kPa");
    }

    @Test
    void widerLineIsTheRemedyWhereTheLineIsTheCause() {
        // 6 mm: 4.893 kPa; with 0.7 m lift (5.835 kPa) 10.73 kPa; 6.3 mm drops 4.026 kPa, together 9.86 kPa
        suction("6 mm", "0.7 m").fallsShort().afterRemedy().meets();
        assertThat(line.getBore()).isEqualTo(Length.of(6.3, "mm"));
    }

    @Test
    void noLineHelpsWhereTheLiftAloneIsTooMuch() {
        assertThat(suction("8 mm", "1.5 m").fallsShort().verdict().remedy().orElseThrow().changes()).isEmpty();
    }

    @Test
    void makersVacuumReplacesTheLimit() {
        record.getGeneratorSet().getMakerLimits().setMaximumFuelVacuum(PressureDifference.of(5, "kPa"));
        suction("8 mm", "0.5 m").fallsShort().limitFromMaker();
    }

    @Test
    void returnLinesDoNotCount() {
        FuelLines.add(record, FuelLineFunction.RETURN);
        suction("8 mm", "0.5 m").measured(5.716, "kPa", 0.0005);
    }

    @Test
    void cannotTellWithoutALine() {
        record.getFuelSupply().getLines().clear();
        suction("8 mm", "0.5 m").cannotTell("fuelSupply.lines.bore", "fuelSupply.lines.length");
    }
}
