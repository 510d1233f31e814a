// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.model.CommissioningRecord;
import garboard.model.Entered;
import garboard.model.GarboardPackage.Literals;
import garboard.model.GeneratorSet;
import garboard.model.Instrument;
import garboard.model.RecordPath;
import garboard.session.handover.OpenPoint.Matter;
import garboard.session.handover.OpenPoint.Topic;

/** What does not stand in the way, but tells how much a signature is worth. */
final class KnownPoints {

    private KnownPoints() {
    }

    static List<OpenPoint> of(CommissioningRecord record) {
        var points = new ArrayList<OpenPoint>();
        if (!record.getPractices().isEmpty()) {
            add(points, Matter.PRACTICES_CHOSEN, "practices", String.join(", ", record.getPractices()));
        }
        if (Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getMakerLimits).filter(Entered::anythingIn).isEmpty()) {
            add(points, Matter.NO_MAKERS_LIMITS, "generatorSet.makerLimits.document");
        }
        if (record.getInstruments().isEmpty()) {
            add(points, Matter.NO_INSTRUMENTS, "instruments");
        }
        for (Instrument instrument : record.getInstruments()) {
            if (instrument.getCalibratedOn() == null) {
                add(points, Matter.INSTRUMENT_NOT_CALIBRATED, RecordPath.key(instrument, Literals.INSTRUMENT__CALIBRATED_ON),
                    Optional.ofNullable(instrument.getName()).orElse(instrument.getId()));
            }
        }
        long silent = record.getPhotographs().stream().filter(photograph -> photograph.getCaption() == null || photograph.getCaption().isBlank()).count();
        if (silent > 0) {
            add(points, Matter.PHOTOGRAPHS_WITHOUT_CAPTION, "photographs", String.valueOf(silent));
        }
        return points;
    }

    private static void add(List<OpenPoint> points, Matter matter, String place, String... facts) {
        points.add(OpenPoint.of(Topic.TO_KNOW, matter, place, facts));
    }
}
