// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__CRANKING_SPEED;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_SPEED;
import static garboard.model.GarboardPackage.Literals.WATER_PUMP__RATED_FLOW;

import java.util.stream.Stream;

import garboard.checks.FeaturePath;
import garboard.model.CommissioningRecord;
import garboard.model.GeneratorSet;
import garboard.physics.exhaust.CrankingFlood;
import garboard.physics.exhaust.DrainBack;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/** How long the starter takes to fill the muffler through the raw-water pump, after a normal stop, with the seacock open. */
final class FloodTime {

    private FloodTime() {
    }

    /** What has to be entered in any case, beside what drains back into the muffler. */
    static FeaturePath[] inputs() {
        return Stream.concat(Stream.of(MufflerFilling.inputs()), Stream.of(path(WATER_PUMP__RATED_FLOW), path(GENERATOR_SET__RATED_SPEED),
            path(GENERATOR_SET__CRANKING_SPEED))).toArray(FeaturePath[]::new);
    }

    /** Flow of the pump, whose rated flow is taken at the set's rated speed, while the starter turns it. */
    static VolumeFlow flow(CommissioningRecord record) {
        GeneratorSet set = record.getGeneratorSet();
        return CrankingFlood.flow(new CrankingFlood.PumpRating(record.getRawWater().getPump().getRatedFlow(), set.getRatedSpeed()),
            set.getCrankingSpeed());
    }

    static TimeSpan of(CommissioningRecord record) {
        DrainBack filling = MufflerFilling.of(record.getExhaust());
        // A muffler that runs over by itself has no room at all, whatever the pump does.
        Volume free = Volume.of(Math.max(0, filling.freeAfterStop().si()));
        return CrankingFlood.timeToFlood(free, flow(record));
    }
}
