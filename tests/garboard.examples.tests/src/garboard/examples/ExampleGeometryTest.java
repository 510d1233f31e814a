// SPDX-License-Identifier: EPL-2.0
package garboard.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import garboard.model.CommissioningRecord;
import garboard.model.ExhaustRun;
import garboard.model.Point;
import garboard.model.RawWaterCircuit;
import garboard.model.Vessel;

/** Drawings are made from the examples: their places lie in the boat and agree with the heights beside them. */
class ExampleGeometryTest {

    /** A tape reads so much amiss. */
    private static final double TAPE_M = 0.01;

    static List<Example> examples() {
        return Examples.all();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyPlaceLiesInTheBoat(Example example) throws Exception {
        CommissioningRecord record = ExampleRecordsTest.record(example);
        Vessel vessel = record.getVessel();
        List<Point> points = new ArrayList<>();
        record.eAllContents().forEachRemaining(part -> {
            if (part instanceof Point point) {
                points.add(point);
            }
        });
        assertThat(points).hasSizeGreaterThan(15).allSatisfy(point -> {
            assertThat(Math.abs(point.getX().si())).isLessThanOrEqualTo(vessel.getLengthOverall().si() / 2);
            assertThat(Math.abs(point.getY().si())).isLessThanOrEqualTo(vessel.getBeam().si() / 2);
            assertThat(point.getZ().si()).isBetween(-vessel.getDraught().si(), vessel.getFreeboardAmidships().si());
        });
    }

    @ParameterizedTest
    @MethodSource("examples")
    void waterIsTakenInBelowAndInjectedAboveTheWaterline(Example example) throws Exception {
        RawWaterCircuit water = ExampleRecordsTest.record(example).getRawWater();
        assertThat(z(water.getPickUp().getPosition())).isLessThan(z(water.getStrainer().getPosition()));
        assertThat(z(water.getStrainer().getPosition())).isNegative();
        assertThat(z(water.getPump().getPosition())).isNegative();
        assertThat(z(water.getInjection())).isPositive().isLessThan(z(water.getSiphonBreak().getVentSeat()));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void exhaustRunsOverRiserMufflerAndCrestToTheOutlet(Example example) throws Exception {
        CommissioningRecord record = ExampleRecordsTest.record(example);
        ExhaustRun exhaust = record.getExhaust();
        Point manifold = exhaust.getPath().getFirst().getPosition();
        Point riser = exhaust.getRiser().getDryCrestInside();
        Point crest = exhaust.getCrest().getInsideBottom();
        Point outlet = exhaust.getOutlet().getInsideBottom();
        assertThat(z(riser)).isGreaterThan(z(manifold)).isGreaterThan(z(record.getRawWater().getInjection()));
        assertThat(z(crest)).isGreaterThan(z(outlet)).isGreaterThan(z(riser));
        assertThat(exhaust.getPath().stream().map(point -> place(point.getPosition())))
            .contains(place(riser), place(record.getRawWater().getInjection()), place(crest)).endsWith(place(outlet));
        assertThat(exhaust.getPath().stream().map(point -> point.getPosition().getX().si()).toList())
            .isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void heightsAgreeWithPlaces(Example example) throws Exception {
        CommissioningRecord record = ExampleRecordsTest.record(example);
        ExhaustRun exhaust = record.getExhaust();
        double bottom = exhaust.getMuffler().getBottomHeight().si();
        double inlet = exhaust.getMuffler().getInletInvertHeight().si();
        assertThat(z(exhaust.getMuffler().getPosition())).isGreaterThanOrEqualTo(bottom);
        assertThat(z(record.getRawWater().getInjection()) - inlet)
            .isCloseTo(exhaust.getRiser().getInjectionDropToMuffler().si(), within(TAPE_M));
        double insideTop = z(exhaust.getCrest().getInsideBottom()) + exhaust.getPath().get(5).getBore().si();
        assertThat(insideTop - bottom).isCloseTo(exhaust.getRiser().getLiftHeight().si(), within(TAPE_M));
    }

    /** No hose is shorter than the straight line between its ends. */
    @ParameterizedTest
    @MethodSource("examples")
    void hoseIsLongEnoughForItsRun(Example example) throws Exception {
        ExhaustRun exhaust = ExampleRecordsTest.record(example).getExhaust();
        List<Point> path = exhaust.getPath().stream().map(point -> point.getPosition()).toList();
        assertThat(exhaust.getSections().get(1).getLength().si()).isGreaterThanOrEqualTo(distance(path.get(2), path.get(3)));
        assertThat(exhaust.getSections().get(2).getLength().si()).isGreaterThanOrEqualTo(distance(path.get(4), path.get(5)));
        assertThat(exhaust.getSections().get(3).getLength().si()).isGreaterThanOrEqualTo(distance(path.get(5), path.get(6)));
    }

    private static double z(Point point) {
        return point.getZ().si();
    }

    private static List<String> place(Point point) {
        return List.of(point.getX().givenNumber() + point.getX().givenUnit(), point.getY().givenNumber() + point.getY().givenUnit(),
            point.getZ().givenNumber() + point.getZ().givenUnit());
    }

    private static double distance(Point one, Point other) {
        return Math.sqrt(square(one.getX().si() - other.getX().si()) + square(one.getY().si() - other.getY().si())
            + square(one.getZ().si() - other.getZ().si()));
    }

    private static double square(double number) {
        return number * number;
    }
}
