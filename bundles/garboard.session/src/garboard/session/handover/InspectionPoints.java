// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.Cooling;
import garboard.model.GarboardPackage.Literals;
import garboard.model.GeneratorSet;
import garboard.model.InspectionAnswer;
import garboard.model.RawWaterCircuit;
import garboard.model.RecordPath;
import garboard.model.WaterPump;
import garboard.session.handover.OpenPoint.Matter;
import garboard.session.handover.OpenPoint.Topic;

/** What nobody has looked at or kept a picture of, and the pieces of the impeller, every one of which must be found. */
final class InspectionPoints {

    private InspectionPoints() {
    }

    static List<OpenPoint> of(CommissioningRecord record) {
        var points = new ArrayList<OpenPoint>();
        impeller(record).ifPresent(points::add);
        if (record.getPhotographs().isEmpty()) {
            points.add(OpenPoint.of(Topic.INSPECTION, Matter.NO_PHOTOGRAPHS, "photographs"));
        }
        for (InspectionAnswer answer : record.getInspections()) {
            String question = Optional.ofNullable(answer.getQuestion()).orElse("");
            if (answer.getAnswer() == Answer.UNANSWERED) {
                points.add(OpenPoint.of(Topic.INSPECTION, Matter.QUESTION_OPEN,
                    RecordPath.key(answer, Literals.INSPECTION_ANSWER__ANSWER), question));
            } else if (answer.getAnswer() == Answer.NO && answer.getPhotographs().isEmpty()) {
                points.add(OpenPoint.of(Topic.INSPECTION, Matter.FINDING_WITHOUT_PICTURE, RecordPath.key(answer), question));
            }
        }
        return points;
    }

    /** A set cooled by its keel may have no such pump. */
    private static Optional<OpenPoint> impeller(CommissioningRecord record) {
        Optional<WaterPump> pump = Optional.ofNullable(record.getRawWater()).map(RawWaterCircuit::getPump);
        Optional<Integer> missing = pump.map(WaterPump::getImpellerPiecesMissing);
        if (missing.isEmpty()) {
            boolean keel = Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getCooling).filter(Cooling.KEEL_COOLED::equals).isPresent();
            return keel && pump.isEmpty() ? Optional.empty()
                : Optional.of(OpenPoint.of(Topic.IMPELLER, Matter.IMPELLER_NOT_COUNTED, "rawWater.pump.impellerPiecesMissing"));
        }
        int found = pump.map(WaterPump::getImpellerPiecesFound).orElse(0);
        return found >= missing.get() ? Optional.empty() : Optional.of(OpenPoint.of(Topic.IMPELLER, Matter.IMPELLER_PIECES,
            "rawWater.pump.impellerPiecesFound", missing.get().toString(), String.valueOf(found)));
    }
}
