// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.HullKind;
import garboard.model.Point;
import garboard.model.SeaRun;
import garboard.model.SiphonBreakKind;
import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.session.OpenRecord;
import garboard.session.trial.SeaHeight.Part;

/** Heights recomputed with a rotation matrix, h = x sin(trim) - y sin(heel) cos(trim) + z cos(heel) cos(trim) - sinkage. */
class SeaHeightTest {

    private final CommissioningRecord record = TrialRecords.withTrial();
    private final SeaRun run = TrialRecords.MAKE.createSeaRun();

    SeaHeightTest() {
        record.getTrial().setSeaRun(run);
        record.setVessel(TrialRecords.MAKE.createVessel());
        record.setRawWater(TrialRecords.MAKE.createRawWaterCircuit());
        record.getRawWater().setSiphonBreak(TrialRecords.MAKE.createSiphonBreak());
        record.setExhaust(TrialRecords.MAKE.createExhaustRun());
        record.getExhaust().setOutlet(TrialRecords.MAKE.createExhaustOutlet());
    }

    @Test
    void takesTheWorstOfTheAttitudesSeen() {
        record.getRawWater().getSiphonBreak().setVentSeat(point("-2.0 m", "0.60 m", "0.45 m"));
        run.setHeelStarboard(Angle.valueOf("25 deg"));
        run.setTrimUp(Angle.valueOf("3 deg"));

        SeaHeight siphon = of(Part.SIPHON_BREAK);

        assertThat(siphon.lowest().orElseThrow().height().in("m")).isCloseTo(0.0494, within(0.00005));
        assertThat(siphon.lowest().orElseThrow().attitude().heel().in("deg")).isCloseTo(25, within(1e-9));
        assertThat(siphon.atRest()).contains(Length.valueOf("0.45 m"));
    }

    @Test
    void findsAnOutletUnderWater() {
        record.getExhaust().getOutlet().setInsideBottom(point("-4.5 m", "1.40 m", "0.10 m"));
        run.setHeelStarboard(Angle.valueOf("7 deg"));
        assertThat(of(Part.OUTLET).lowest().orElseThrow().height().in("m")).isCloseTo(-0.0714, within(0.00005));

        run.setTrimUp(Angle.valueOf("2 deg"));
        assertThat(of(Part.OUTLET).lowest().orElseThrow().height().in("m")).isCloseTo(-0.2284, within(0.00005));
    }

    @Test
    void doesNotHoldAHeelAgainstTheOtherSide() {
        record.getRawWater().getSiphonBreak().setVentSeat(point("0 m", "1.00 m", "0.45 m"));
        run.setHeelPort(Angle.valueOf("30 deg"));
        assertThat(of(Part.SIPHON_BREAK).lowest().orElseThrow().height().in("m")).as("upright is the worst seen").isCloseTo(0.45, within(1e-9));

        run.setHeelStarboard(Angle.valueOf("30 deg"));
        assertThat(of(Part.SIPHON_BREAK).lowest().orElseThrow().height().in("m")).isCloseTo(-0.1103, within(0.00005));
    }

    @Test
    void countsTheSinkage() {
        record.getRawWater().getSiphonBreak().setVentSeat(point("0 m", "0.60 m", "0.45 m"));
        record.getVessel().setSinkage(Length.valueOf("20 mm"));
        run.setHeelStarboard(Angle.valueOf("25 deg"));

        // 0.1543 m less 20 mm
        assertThat(of(Part.SIPHON_BREAK).lowest().orElseThrow().height().in("m")).isCloseTo(0.1343, within(0.00005));
    }

    @Test
    void namesTheCoordinatesThatAreMissing() {
        record.getRawWater().getSiphonBreak().setVentSeat(point("0 m", "0 m", "0.45 m"));
        record.getRawWater().getSiphonBreak().getVentSeat().setY(null);
        run.setHeelStarboard(Angle.valueOf("25 deg"));

        assertThat(of(Part.SIPHON_BREAK).lowest()).isEmpty();
        assertThat(of(Part.SIPHON_BREAK).missing()).containsExactly("rawWater.siphonBreak.ventSeat.y");
        assertThat(of(Part.CREST).missing()).hasSize(3);
    }

    @Test
    void saysNothingWithoutAnAngleOrBeyondCapsizing() {
        record.getRawWater().getSiphonBreak().setVentSeat(point("0 m", "0 m", "0.45 m"));
        assertThat(of(Part.SIPHON_BREAK).lowest()).isEmpty();

        run.setHeelPort(Angle.valueOf("260 deg"));
        assertThat(of(Part.SIPHON_BREAK).lowest()).isEmpty();
    }

    @Test
    void tellsWhatTheCheckAsksForAtTheAttitudeToDesignFor() {
        record.getVessel().setHullKind(HullKind.SAILING_MONOHULL);
        record.getVessel().setDesignHeel(Angle.valueOf("30 deg"));
        record.getVessel().setDesignTrim(Angle.valueOf("2 deg"));
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.VALVED_VENTED_LOOP);
        record.getRawWater().getSiphonBreak().setVentSeat(point("0 m", "0.10 m", "0.45 m"));
        record.getRawWater().setInjection(point("0 m", "0 m", "0 m"));
        try (OpenRecord open = TrialRecords.of(record, HandClock.at("2026-05-01T10:00+02:00"))) {
            // Gerr, Boat Mechanical Systems Handbook: 8 in above the heeled waterline, in round millimetres 200
            assertThat(of(Part.SIPHON_BREAK).wanted(open.verdicts().evaluation()).orElseThrow().in("mm")).isCloseTo(200, within(0.5));
            assertThat(of(Part.CREST).wanted(open.verdicts().evaluation())).isEmpty();
        }
    }

    @Test
    void saysHowFarTheRunWentTowardsTheDesign() {
        assertThat(SeaReach.ofHeel(record)).isEmpty();
        record.getVessel().setDesignHeel(Angle.valueOf("30 deg"));
        record.getVessel().setDesignRoll(Angle.valueOf("15 deg"));
        run.setHeelPort(Angle.valueOf("24 deg"));
        run.setHeelStarboard(Angle.valueOf("26 deg"));

        assertThat(SeaReach.ofHeel(record)).contains(new SeaReach(Angle.valueOf("26 deg"), Angle.valueOf("30 deg")));
        assertThat(SeaReach.ofHeel(record).orElseThrow().reached()).isFalse();
        run.setHeelPort(Angle.valueOf("30 deg"));
        assertThat(SeaReach.ofHeel(record).orElseThrow().reached()).isTrue();
        assertThat(SeaReach.ofTrim(record)).isEmpty();
    }

    private SeaHeight of(Part part) {
        return SeaHeight.of(record).stream().filter(found -> found.part() == part).findFirst().orElseThrow();
    }

    private static Point point(String x, String y, String z) {
        Point point = TrialRecords.MAKE.createPoint();
        point.setX(Length.valueOf(x));
        point.setY(Length.valueOf(y));
        point.setZ(Length.valueOf(z));
        return point;
    }
}
