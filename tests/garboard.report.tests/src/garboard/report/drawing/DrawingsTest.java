// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;

import org.junit.jupiter.api.Test;

import garboard.checks.Evaluation;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.HullKind;
import garboard.physics.geometry.BoatPoint;
import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.quantity.UnitSystem;
import garboard.report.DrawnSample;
import garboard.report.Figures;
import garboard.report.Picture;

class DrawingsTest {

    private final CommissioningRecord record = DrawnSample.record();
    private final Evaluation evaluation = DrawnSample.evaluation(record);
    private final Figures figures = Figures.in(UnitSystem.SI);

    @Test
    void heeledWaterRisesWithTheTangentOfTheHeel() {
        Water water = Water.about(vessel(HullKind.SAILING_MONOHULL, 20, 10));
        double atOneMetre = Water.surface(new BoatPoint(Length.of(0), Length.of(1), Length.of(0)), water.heeled(1));
        assertThat(atOneMetre).isCloseTo(0.36397, offset(1e-5)); // tan 20 deg, from a table of tangents
        double opposite = Water.surface(new BoatPoint(Length.of(0), Length.of(1), Length.of(0)), water.heeled(-1));
        assertThat(opposite).isCloseTo(-0.36397, offset(1e-5));
    }

    @Test
    void sailingVesselHeelsAndMotorVesselRolls() {
        assertThat(Math.toDegrees(Water.about(vessel(HullKind.SAILING_MONOHULL, 20, 10)).heel().si())).isCloseTo(20, offset(1e-9));
        assertThat(Math.toDegrees(Water.about(vessel(HullKind.MOTOR_PLANING, 20, 10)).heel().si())).isCloseTo(10, offset(1e-9));
        assertThat(Water.about(GarboardFactory.eINSTANCE.createCommissioningRecord()).inclines()).isFalse();
    }

    @Test
    void elevationNamesPartsWithHeightsAndWhatIsNotDrawn() {
        SideElevation side = SideElevation.of(record, evaluation, figures);
        assertThat(side.picture(260, 130).orElseThrow().alternative()).contains("Siphon break, vent seat, 420 mm above the loaded waterline")
            .contains("Falls short: SEAT-HEIGHT");
        assertThat(side.notDrawn()).isEmpty();
        assertThat(CrossElevation.of(record, evaluation, figures).notDrawn()).containsExactly("Fuel pump");
    }

    @Test
    void runProfileMeasuresStraightFromPlaceToPlace() {
        Picture picture = RunProfile.of(record, evaluation, figures).picture(260, 130).orElseThrow();
        assertThat(picture.alternative()).contains("Exhaust: Elbow 60 mm above, Muffler in 150 mm below, Crest 720 mm above, Outlet 190 mm above.");
    }

    @Test
    void clearanceTellsTheLowestHeight() {
        var level = vessel(HullKind.SAILING_MONOHULL, 30, 0);
        level.setRawWater(GarboardFactory.eINSTANCE.createRawWaterCircuit());
        level.getRawWater().setSiphonBreak(GarboardFactory.eINSTANCE.createSiphonBreak());
        var seat = GarboardFactory.eINSTANCE.createPoint();
        seat.setX(Length.of(0));
        seat.setY(Length.of(-0.6));
        seat.setZ(Length.of(1));
        level.getRawWater().getSiphonBreak().setVentSeat(seat);
        Picture picture = ClearancePlot.of(level, DrawnSample.evaluation(level), figures).picture(260, 130).orElseThrow();
        // at 30 deg to port: 1 m x cos 30 - 0.6 m x sin 30 = 0.866 - 0.3 = 566 mm
        assertThat(picture.alternative()).contains("Siphon break, vent seat: at the least 566 mm above the water.");
    }

    @Test
    void scaleBarIsARoundLengthOfTheReadersUnits() {
        var metric = new Heights(figures, Water.about(record));
        assertThat(metric.length(metric.longestRound(1.3))).isEqualTo("1000 mm");
        var customary = new Heights(Figures.in(UnitSystem.US), Water.about(record));
        assertThat(customary.length(customary.longestRound(0.7))).isEqualTo("24 in"); // 0.7 m is 27.6 in
    }

    @Test
    void everyDrawingPutsInkOnThePaper() {
        for (Picture picture : DrawnSample.pictures(record, evaluation, figures)) {
            assertThat(inkOn(picture)).as(picture.name()).isGreaterThan(0.005).isLessThan(0.5);
        }
    }

    @Test
    void thereIsNoDrawingWithoutPlaces() {
        var empty = GarboardFactory.eINSTANCE.createCommissioningRecord();
        Evaluation nothing = DrawnSample.evaluation(empty);
        assertThat(SideElevation.of(empty, nothing, figures).picture(260, 130)).isEmpty();
        assertThat(CrossElevation.of(empty, nothing, figures).picture(260, 130)).isEmpty();
        assertThat(RunProfile.of(empty, nothing, figures).picture(260, 130)).isEmpty();
        assertThat(ClearancePlot.of(empty, nothing, figures).picture(260, 130)).isEmpty();
    }

    private static CommissioningRecord vessel(HullKind kind, double heelDegrees, double rollDegrees) {
        CommissioningRecord made = GarboardFactory.eINSTANCE.createCommissioningRecord();
        made.setVessel(GarboardFactory.eINSTANCE.createVessel());
        made.getVessel().setHullKind(kind);
        made.getVessel().setDesignHeel(Angle.of(heelDegrees, "deg"));
        made.getVessel().setDesignRoll(Angle.of(rollDegrees, "deg"));
        return made;
    }

    private static double inkOn(Picture picture) {
        var image = new BufferedImage((int) (picture.widthMm() * 4), (int) (picture.heightMm() * 4), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.scale(4, 4);
        picture.painter().accept(graphics);
        graphics.dispose();
        long dark = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                dark += (image.getRGB(x, y) & 0xFF) < 0xB0 ? 1 : 0;
            }
        }
        return (double) dark / image.getWidth() / image.getHeight();
    }
}
