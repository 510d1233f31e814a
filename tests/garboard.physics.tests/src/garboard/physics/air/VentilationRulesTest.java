// SPDX-License-Identifier: EPL-2.0
package garboard.physics.air;

import static garboard.physics.PrintedQuantity.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.physics.OutOfRangeException;
import garboard.physics.Printed;
import garboard.physics.air.Ventilation46Cfr182.Figures;
import garboard.quantity.Area;
import garboard.quantity.Length;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

class VentilationRulesTest {

    // 33 CFR Table 183.610, recomputed independently from its rows; 319.7 and 290 ft3 with results printed in examples
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # net volume | rated       | output
            20 ft3    | 50 ft3/min     | 20 ft3/min
            33.9 ft3  | 50 ft3/min     | 20 ft3/min
            34 ft3    | 51.0 ft3/min   | 20.4 ft3/min
            60 ft3    | 90 ft3/min     | 36 ft3/min
            60 ft3    | 152.91 m3/h    | 61.16 m3/h
            100 ft3   | 150 ft3/min    | 60 ft3/min
            150 ft3   | 175 ft3/min    | 70 ft3/min
            290 ft3   | 245 ft3/min    | 98 ft3/min
            319.7 ft3 | 259.85 ft3/min | 103.94 ft3/min
            """)
    void ratesTheBlower(String volume, String rated, String output) {
        assertPrinted(rated, Ventilation33Cfr183.leastRatedCapacity(Volume.valueOf(volume)));
        assertPrinted(output, Ventilation33Cfr183.leastOutput(Volume.valueOf(volume)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 33, 34, 50, 99, 100, 101, 500})
    void asksForFortyPerCentOfTheRating(double cubicFeet) {
        // 33 CFR 183.610: least system efficiency 40 %
        Volume net = Volume.of(cubicFeet, "ft3");
        assertThat(Ventilation33Cfr183.leastOutput(net).si()).isCloseTo(0.4 * Ventilation33Cfr183.leastRatedCapacity(net).si(), within(1e-15));
    }

    // 33 CFR 183.630(d): A = 5 ln(V/5), recomputed independently
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # net volume | formula | required
            5 ft3   | 0.0 in2     | 3 in2
            8 ft3   | 2.3500 in2  | 3 in2
            20 ft3  | 6.93 in2    | 6.93 in2
            25 ft3  | 8.0472 in2  | 8.0472 in2
            50 ft3  | 11.5129 in2 | 7427.7 mm2
            60 ft3  | 12.42 in2   | 12.42 in2
            150 ft3 | 17.0060 in2 | 17.01 in2
            """)
    void sizesNaturalVentilation(String volume, String formula, String required) {
        assertPrinted(formula, Ventilation33Cfr183.naturalAreaByFormula(Volume.valueOf(volume)));
        assertPrinted(required, Ventilation33Cfr183.leastNaturalArea(Volume.valueOf(volume)));
    }

    @Test
    void knowsTheVolumeAtWhichThreeSquareInchesEnd() {
        assertPrinted("9.1106 ft3", Ventilation33Cfr183.volumeFor(Area.valueOf("3 in2"))); // 33 CFR 183.630(d), recomputed independently
        assertThat(Ventilation33Cfr183.naturalAreaByFormula(Volume.valueOf("2 ft3")).si()).isZero();
    }

    @Test
    void judgesOpeningsTogetherAndEach() {
        // 33 CFR 183.630(d) and (e) at 50 ft3: 11.5129 in2 together and more than 3.0 in2 each
        Volume net = Volume.valueOf("50 ft3");
        assertThat(Ventilation33Cfr183.naturalOpeningsPass(net, List.of(Area.valueOf("6 in2"), Area.valueOf("6 in2")))).isTrue();
        Area small = Area.valueOf("2.9 in2");
        assertThat(Ventilation33Cfr183.naturalOpeningsPass(net, List.of(small, small, small, small))).isFalse();
        assertThat(Ventilation33Cfr183.naturalOpeningsPass(net, List.of(Area.valueOf("11.5 in2")))).isFalse();
        assertThat(Ventilation33Cfr183.naturalOpeningsPass(net, List.of())).isFalse();
        assertThat(Ventilation33Cfr183.naturalOpeningsPass(Volume.valueOf("5 ft3"), List.of(Area.valueOf("3 in2")))).isFalse();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # net volume | end fitting: 33 CFR 183.630(f), 80 % of 5 ln(V/5)
            25 ft3  | 6.4378 in2
            50 ft3  | 9.2103 in2
            150 ft3 | 13.6048 in2
            """)
    void sizesEndFittings(String volume, String fitting) {
        assertPrinted(fitting, Ventilation33Cfr183.leastEndFitting(Ventilation33Cfr183.leastNaturalArea(Volume.valueOf(volume))));
    }

    @Test
    void knowsWhatCountsAsOpen() {
        // 33 CFR 183.605: 15 in2 for each ft3; ISO 11105:2020: 0.34 m2 for each m3
        assertPrinted("300 in2", Ventilation33Cfr183.openToAtmosphere(Volume.valueOf("20 ft3")));
        assertPrinted("112.5 in2", Ventilation33Cfr183.openToAtmosphere(Volume.valueOf("7.5 ft3")));
        assertPrinted("0.3418 m2", Ventilation33Cfr183.openToAtmosphere(Volume.valueOf("1 m3")));
        assertPrinted("0.68 m2", Ventilation33Cfr183.openToAtmosphere(Volume.valueOf("2.0 m3")));
    }

    @Test
    void joinsCompartmentsByTheOpeningBetweenThem() {
        // 33 CFR 183.630: more than 2 % of 20 ft2 = 57.6 in2
        var bulkhead = Ventilation33Cfr183.Partition.of(Area.valueOf("20 ft2"));
        assertThat(Ventilation33Cfr183.joined(bulkhead.open(Area.valueOf("57.6 in2")))).isFalse();
        assertThat(Ventilation33Cfr183.joined(bulkhead.open(Area.valueOf("60 in2")))).isTrue();
    }

    @Test
    void knowsTheOtherFiguresOf33Cfr183() {
        assertPrinted("12 in", Ventilation33Cfr183.highestPickUp(Length.valueOf("36 in"))); // 33 CFR 183.610(d): lower third
        Printed.assertPrinted("36.0", Ventilation33Cfr183.greatestPermeation(Volume.valueOf("30 ft3")).in("g/h") * 24); // 183.620(a)(5), memory
        Printed.assertPrinted("1.2", Ventilation33Cfr183.greatestPermeation(Volume.valueOf("0.5 ft3")).in("g/h") * 24); // 183.620(a)(5), memory
        assertPrinted("4 min", Ventilation33Cfr183.BLOW_BEFORE_START); // 33 CFR 183.610(f)
        assertThatThrownBy(() -> Ventilation33Cfr183.leastOutput(Volume.of(0))).isInstanceOf(OutOfRangeException.class)
            .hasMessageContaining("net volume");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # space   | figures | time  | flow: 46 CFR 182.460(b)
            500 ft3  | INCH    | 2 min | 250 ft3/min
            501 ft3  | INCH    | 3 min | 167 ft3/min
            1000 ft3 | INCH    | 3 min | 333 ft3/min
            1200 ft3 | INCH    | 4 min | 300 ft3/min
            1600 ft3 | INCH    | 5 min | 320 ft3/min
            14 m3    | METRIC  | 2 min | 7.0 m3/min
            14.1 m3  | METRIC  | 3 min | 4.7 m3/min
            14.1 m3  | INCH    | 2 min | 7.05 m3/min
            20 m3    | METRIC  | 3 min | 6.67 m3/min
            28.50 m3 | METRIC  | 3 min | 9.50 m3/min
            43.1 m3  | METRIC  | 5 min | 8.62 m3/min
            """)
    void changesTheAir(String space, Figures figures, String time, String flow) {
        assertPrinted(time, Ventilation46Cfr182.timePerAirChange(Volume.valueOf(space), figures));
        assertPrinted(flow, Ventilation46Cfr182.leastFlow(Volume.valueOf(space), figures));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # flow        | figures | area: 46 CFR 182.460(f), 2000 ft/min or 10 m/s
            250 ft3/min | INCH   | 18.0 in2
            100 ft3/min | INCH   | 7.2 in2
            250 ft3/min | METRIC | 11798.7 mm2
            100 ft3/min | METRIC | 4719.5 mm2
            """)
    void sizesExhaustDucts(String flow, Figures figures, String area) {
        assertPrinted(area, Ventilation46Cfr182.leastDuctArea(VolumeFlow.valueOf(flow), figures));
    }

    @Test
    void knowsTheOtherFiguresOf46Cfr182() {
        // 46 CFR 182.460(f): no side more than twice the other
        assertThat(Ventilation46Cfr182.ductSidesPass(Length.valueOf("2 in"), Length.valueOf("4 in"))).isTrue();
        assertThat(Ventilation46Cfr182.ductSidesPass(Length.valueOf("5 in"), Length.valueOf("2 in"))).isFalse();
        // 46 CFR 185.352: one change of air
        assertPrinted("1.6 min", Ventilation46Cfr182.blowBeforeStart(Volume.valueOf("400 ft3"), VolumeFlow.valueOf("250 ft3/min")));
        assertPrinted("2.0 min", Ventilation46Cfr182.blowBeforeStart(Volume.valueOf("800 ft3"), VolumeFlow.valueOf("400 ft3/min")));
        // 46 CFR 182.465: 1 in2 for each ft, 650 mm2 for each 300 mm of beam
        assertPrinted("14.0 in2", Ventilation46Cfr182.leastDieselDuctArea(Length.valueOf("14 ft"), Figures.INCH));
        assertPrinted("8890.0 mm2", Ventilation46Cfr182.leastDieselDuctArea(Length.valueOf("4.2 m"), Figures.INCH));
        assertPrinted("88.9 cm2", Ventilation46Cfr182.leastDieselDuctArea(Length.valueOf("4.2 m"), Figures.INCH));
        assertPrinted("13.8 in2", Ventilation46Cfr182.leastDieselDuctArea(Length.valueOf("4.2 m"), Figures.INCH));
        assertPrinted("9100 mm2", Ventilation46Cfr182.leastDieselDuctArea(Length.valueOf("4.2 m"), Figures.METRIC));
        assertPrinted("28 in2", Ventilation46Cfr182.leastCowl(Area.valueOf("14 in2")));
        // 46 CFR 182.470
        assertPrinted("65 mm", Ventilation46Cfr182.tankSpaceVent(Volume.valueOf("14.0 m3")));
        assertPrinted("40 mm", Ventilation46Cfr182.tankSpaceVent(Volume.valueOf("13.9 m3")));
    }
}
