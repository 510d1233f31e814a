// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Locale;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.HullKind;
import garboard.physics.geometry.Attitude;
import garboard.physics.geometry.BoatPoint;
import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.report.DrawnSample;

class ArrangementTest {

    @Test
    void plumbLineMeetsTheLeaningWater() {
        Attitude heeled = Attitude.heeled(Angle.of(30, "deg"));
        PlumbFoot foot = PlumbFoot.of(BoatPoint.atHeight(Length.of(1)), heeled);
        // A point 1 m above the water on the centreline, 30 deg to starboard: 1 m x cos 30 = 0.866 m above the water. Its foot lies
        // 0.866 m x sin 30 = 0.433 m to starboard, where the water stands 0.433 m x tan 30 = 0.25 m up the boat.
        assertThat(foot.clearance()).isCloseTo(0.8660, offset(1e-4));
        assertThat(foot.toStarboard()).isCloseTo(0.4330, offset(1e-4));
        assertThat(foot.height()).isCloseTo(0.25, offset(1e-4));
        assertThat(foot.forward()).isCloseTo(0, offset(1e-12));
    }

    @Test
    void plumbLineMeetsTheWaterOfATrimmedBoat() {
        PlumbFoot foot = PlumbFoot.of(BoatPoint.atHeight(Length.of(1)), Attitude.upright().withTrim(Angle.of(10, "deg")));
        // Bow up 10 deg: 1 m x cos 10 = 0.9848 m; the foot lies 0.9848 m x sin 10 = 0.1710 m aft, the water there 0.1710 m x tan 10 = 0.0302 m up.
        assertThat(foot.clearance()).isCloseTo(0.9848, offset(1e-4));
        assertThat(foot.forward()).isCloseTo(-0.1710, offset(1e-4));
        assertThat(foot.height()).isCloseTo(0.0302, offset(1e-4));
    }

    @Test
    void slidersReachHalfAsFarAgainAsDesignedFor() {
        CommissioningRecord record = LiveSample.empty();
        record.getVessel().setDesignHeel(Angle.of(30, "deg"));
        record.getVessel().setDesignTrim(Angle.of(2, "deg"));
        Water water = Water.about(record);
        assertThat(water.heelReach().in("deg")).isCloseTo(45, offset(1e-9)); // 1.5 x 30
        assertThat(water.trimReach().in("deg")).isCloseTo(10, offset(1e-9)); // 1.5 x 2 = 3, but never less than 10
        record.getVessel().setDesignHeel(Angle.of(78, "deg"));
        assertThat(Water.about(record).heelReach().in("deg")).isCloseTo(78, offset(1e-9)); // never less than designed for
        assertThat(Water.about(LiveSample.empty()).heelReach().in("deg")).isCloseTo(30, offset(1e-9));
    }

    @Test
    void theWorstPointIsTheOneThatComesLowest() {
        CommissioningRecord record = LiveSample.twoPoints(0.9, -0.3);
        record.getVessel().setDesignHeel(Angle.of(30, "deg"));
        record.setExhaust(garboard.model.GarboardFactory.eINSTANCE.createExhaustRun());
        record.getExhaust().setCrest(garboard.model.GarboardFactory.eINSTANCE.createExhaustCrest());
        // At rest it is the higher one; at 30 deg to starboard 1.0 cos 30 - 1.2 sin 30 = 0.266 m, the siphon break 0.9 cos 30 = 0.779 m.
        record.getExhaust().getCrest().setInsideBottom(LiveSample.point(0, 1.2, 1.0));
        Arrangement arrangement = LiveSample.arrangement(record);
        assertThat(arrangement.worst()).map(PlacedPart::id).contains("crest");
        assertThat(arrangement.clearances(Attitude.upright())).extracting(one -> one.part().id()).containsExactly("siphonBreak", "crest");
        assertThat(arrangement.clearances(Attitude.heeled(Angle.of(30, "deg")))).first().satisfies(lowest -> {
            assertThat(lowest.part().id()).isEqualTo("crest");
            assertThat(lowest.metres()).isCloseTo(0.266, offset(1e-3));
        });
    }

    @Test
    void findsThePartToWhichAFieldBelongs() {
        Arrangement arrangement = LiveSample.arrangement(DrawnSample.record());
        assertThat(arrangement.partOf("rawWater.siphonBreak.kind")).map(PlacedPart::id).contains("siphonBreak");
        assertThat(arrangement.partOf("rawWater.siphonBreak.ventSeat.z")).map(PlacedPart::id).contains("siphonBreak");
        assertThat(arrangement.partOf("rawWater.injection.y")).map(PlacedPart::id).contains("injection");
        assertThat(arrangement.partOf("fuelSupply.tank.capacity")).map(PlacedPart::id).contains("fuelTank");
        assertThat(arrangement.partOf("rawWater.siphonBreakHoseBore")).isEmpty();
        assertThat(arrangement.partOf("vessel.beam")).isEmpty();
    }

    @Test
    void asksForTheAngleThatTheVesselIsDesignedFor() {
        CommissioningRecord sails = LiveSample.empty();
        assertThat(LiveSample.arrangement(sails).lacks(View.CROSS)).extracting(Lack::field).contains("vessel.designHeel", "vessel.beam");
        sails.getVessel().setHullKind(HullKind.MOTOR_PLANING);
        assertThat(LiveSample.arrangement(sails).lacks(View.CROSS)).extracting(Lack::field).contains("vessel.designRoll");
        assertThat(LiveSample.arrangement(sails).lacks(View.SIDE)).extracting(Lack::field).contains("vessel.lengthOverall")
            .doesNotContain("vessel.beam");
    }

    @Test
    void namesOnlyTheCoordinatesThatAViewNeeds() {
        CommissioningRecord record = LiveSample.twoPoints(0.5, -0.3);
        record.getRawWater().getSiphonBreak().getVentSeat().setY(null);
        assertThat(LiveSample.arrangement(record).lacks(View.SIDE)).extracting(Lack::id).doesNotContain("siphonBreak");
        assertThat(LiveSample.arrangement(record).lacks(View.CROSS)).filteredOn(lack -> lack.id().equals("siphonBreak")).singleElement()
            .satisfies(lack -> assertThat(lack.missing()).containsExactly("y"));
    }

    @Test
    void speaksTheLanguageOfTheReader() {
        CommissioningRecord record = DrawnSample.record();
        Arrangement german = Arrangement.of(record, DrawnSample.evaluation(record), Words.in(Locale.GERMAN));
        assertThat(german.part("muffler")).map(PlacedPart::name).contains("Wassersammler");
        assertThat(Words.in(Locale.FRENCH).get("part.muffler")).isEqualTo("Muffler");
    }
}
