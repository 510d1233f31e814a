// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.util.Optional;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.HullKind;
import garboard.model.Point;
import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.quantity.UnitSystem;
import garboard.report.DrawnSample;
import garboard.report.Figures;

/** Sheets of made-up records, laid out with letters of one width. */
final class LiveSample {

    private LiveSample() {
    }

    static CommissioningRecord empty() {
        CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        record.setVessel(GarboardFactory.eINSTANCE.createVessel());
        record.getVessel().setHullKind(HullKind.SAILING_MONOHULL);
        return record;
    }

    /** A siphon break and a hull pick-up, both at midship on the centreline, and nothing else. */
    static CommissioningRecord twoPoints(double seatM, double pickUpM) {
        CommissioningRecord record = empty();
        record.setRawWater(GarboardFactory.eINSTANCE.createRawWaterCircuit());
        record.getRawWater().setSiphonBreak(GarboardFactory.eINSTANCE.createSiphonBreak());
        record.getRawWater().getSiphonBreak().setVentSeat(point(0, 0, seatM));
        record.getRawWater().setPickUp(GarboardFactory.eINSTANCE.createHullPickUp());
        record.getRawWater().getPickUp().setPosition(point(0, 0, pickUpM));
        return record;
    }

    static Point point(double x, double y, double z) {
        Point point = GarboardFactory.eINSTANCE.createPoint();
        point.setX(Length.of(x));
        point.setY(Length.of(y));
        point.setZ(Length.of(z));
        return point;
    }

    static Arrangement arrangement(CommissioningRecord record) {
        return Arrangement.of(record, DrawnSample.evaluation(record), Words.ENGLISH);
    }

    static Showing showing(CommissioningRecord record, double heelDegrees, double trimDegrees) {
        Arrangement arrangement = arrangement(record);
        return new Showing(arrangement, arrangement.water().at(Angle.of(heelDegrees, "deg"), Angle.of(trimDegrees, "deg")), Optional.empty(),
            Optional.empty(), false, Figures.in(UnitSystem.SI), Words.ENGLISH);
    }

    static LiveSheet sheet(CommissioningRecord record, View view, double width, double height) {
        return LiveSheet.of(showing(record, 0, 0), view, width, height, new TypewriterBoard(), Optional.empty(), false);
    }

    static Spot spot(LiveSheet sheet, String id) {
        return sheet.spots().stream().filter(spot -> spot.id().equals(id)).findFirst().orElseThrow();
    }
}
