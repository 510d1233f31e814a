// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.HullKind;
import garboard.model.Point;
import garboard.model.ValveKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Angle;
import garboard.quantity.Length;

class SeacockFittedTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aMotorCraftThatRollsSevenDegrees() {
        record.getVessel().setHullKind(HullKind.MOTOR_PLANING);
        record.getVessel().setDesignRoll(Angle.of(7, "deg"));
        record.getVessel().setDesignTrim(Angle.of(0, "deg"));
    }

    private Judged seacock(ValveKind kind, String x, String y, String z) {
        Point position = record.getRawWater().getPickUp().getPosition();
        position.setX(Length.valueOf(x));
        position.setY(Length.valueOf(y));
        position.setZ(Length.valueOf(z));
        record.getRawWater().getSeacock().setKind(kind);
        return judge(SeacockFitted.check(), record);
    }

    @Test
    void openingUnderWaterNeedsASeacock() {
        seacock(ValveKind.NONE, "0 m", "0 m", "-0.5 m").fallsShort();
        seacock(ValveKind.FLANGED_SEACOCK, "0 m", "0 m", "-0.5 m").meets();
    }

    @Test
    void heelCounts() {
        // recomputed from the rotation of the axes: x -4.5, y 1.40, z 0.10 at 7 deg: 71 mm under water; z 0.30, y 1.2: 151.5 mm above
        assertThat(seacock(ValveKind.NONE, "-4.5 m", "1.40 m", "0.10 m").fallsShort().verdict().sentence()).contains("71.4 mm")
            .contains("7 deg heel to starboard");
        assertThat(seacock(ValveKind.NONE, "0 m", "1.2 m", "0.30 m").meets().verdict().sentence()).contains("152 mm");
    }

    @Test
    void openingAtTheHeeledWaterlineIsNotBelowIt() {
        record.getVessel().setDesignRoll(Angle.of(0, "deg"));
        seacock(ValveKind.NONE, "0 m", "0 m", "0 mm").meets();
    }

    @Test
    void sinkageBringsItUnder() {
        record.getVessel().setDesignRoll(Angle.of(0, "deg"));
        seacock(ValveKind.NONE, "0 m", "0 m", "50 mm").meets();
        record.getVessel().setSinkage(Length.of(60, "mm"));
        seacock(ValveKind.NONE, "0 m", "0 m", "50 mm").fallsShort();
    }

    @Test
    void floodingThroughAFailedHoseIsTold() {
        record.getRawWater().getPickUp().setBore(Length.of(25.4, "mm"));
        // recomputed from Torricelli with Cd 0.80: 25.4 mm, 0.914 m down: 103 L/min
        assertThat(seacock(ValveKind.NONE, "0 m", "0 m", "-0.914 m").fallsShort().verdict().sentence()).contains("103 L/min");
    }

    @Test
    void sailingYachtsHeel() {
        record.getVessel().setHullKind(HullKind.SAILING_MONOHULL);
        seacock(ValveKind.NONE, "0 m", "1.0 m", "0.45 m").cannotTell("vessel.designHeel");
        // recomputed from the rotation of the axes: y 1.0, z 0.45 at 30 deg: 110 mm under water
        record.getVessel().setDesignHeel(Angle.of(30, "deg"));
        seacock(ValveKind.NONE, "0 m", "1.0 m", "0.45 m").fallsShort();
    }

    @Test
    void cannotTellWithoutTheValve() {
        seacock(ValveKind.NOT_ENTERED, "0 m", "0 m", "-0.5 m").cannotTell("rawWater.seacock.kind");
    }
}
