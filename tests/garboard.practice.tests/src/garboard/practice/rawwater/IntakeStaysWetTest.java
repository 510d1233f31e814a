// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.HullKind;
import garboard.model.Point;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Angle;
import garboard.quantity.Length;

class IntakeStaysWetTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aYachtThatHeelsThirtyDegrees() {
        record.getVessel().setHullKind(HullKind.SAILING_MONOHULL);
        record.getVessel().setDesignHeel(Angle.of(30, "deg"));
        record.getVessel().setDesignTrim(Angle.of(0, "deg"));
    }

    private Judged intake(String x, String y, String z) {
        Point position = record.getRawWater().getPickUp().getPosition();
        position.setX(Length.valueOf(x));
        position.setY(Length.valueOf(y));
        position.setZ(Length.valueOf(z));
        return judge(IntakeStaysWet.check(), record);
    }

    @Test
    void intakeOffTheCentrelineComesUp() {
        // recomputed from the rotation of the axes: z -0.40, y 0.50, heel 30 deg: 0.0964 m under water; common practice asks for 0.15 m
        var verdict = intake("0 m", "0.50 m", "-0.40 m").fallsShort().measured(0.0964, "m", 0.00005).limit(150, "mm", 1e-9).verdict();
        assertThat(verdict.sentence()).contains("30 deg heel to port").contains("under water");
        assertThat(intake("0 m", "-0.50 m", "-0.40 m").fallsShort().verdict().sentence()).contains("heel to starboard");
    }

    @Test
    void intakeNearTheCentrelineStaysWet() {
        // recomputed from the same: y 0.20 leaves 0.2464 m
        intake("0 m", "0.20 m", "-0.40 m").meets().measured(0.2464, "m", 0.00005);
    }

    @Test
    void exactlyTheCoverMeets() {
        record.getVessel().setDesignHeel(Angle.of(0, "deg"));
        intake("0 m", "0.50 m", "-150 mm").meets();
        intake("0 m", "0.50 m", "-149 mm").fallsShort();
    }

    @Test
    void trimAndLightShipBringItUpToo() {
        record.getVessel().setDesignHeel(Angle.of(0, "deg"));
        record.getVessel().setDesignTrim(Angle.of(3, "deg"));
        // rotation of the axes: 4 m sin 3 deg = 0.209 m, 0.40 m cos 3 deg = 0.399 m
        intake("4 m", "0 m", "-0.40 m").meets().measured(0.190, "m", 0.0005);
        record.getRawWater().getPickUp().setLightShipRise(Length.of(50, "mm"));
        var verdict = intake("4 m", "0 m", "-0.40 m").fallsShort().measured(0.140, "m", 0.0005).verdict();
        assertThat(verdict.sentence()).contains("3 deg bow up");
    }

    @Test
    void remedyLowersIt() {
        // (0.15 + 0.5 sin 30 deg) / cos 30 deg = 0.462 m, to the next centimetre down
        intake("0 m", "0.50 m", "-0.40 m").afterRemedy().meets();
        assertThat(record.getRawWater().getPickUp().getPosition().getZ()).isEqualTo(Length.of(-470, "mm"));
    }

    @Test
    void motorCraftRoll() {
        record.getVessel().setHullKind(HullKind.MOTOR_PLANING);
        intake("0 m", "0.50 m", "-0.40 m").cannotTell("vessel.designRoll");
        record.getVessel().setDesignRoll(Angle.of(30, "deg"));
        intake("0 m", "0.50 m", "-0.40 m").fallsShort().measured(0.0964, "m", 0.00005);
    }

    @Test
    void cannotTellWithoutThePlace() {
        judge(IntakeStaysWet.check(), record).cannotTell("rawWater.pickUp.position.x", "rawWater.pickUp.position.y",
            "rawWater.pickUp.position.z");
    }
}
