// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__BORE;

import java.util.Optional;

import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.WaterHoseRun;
import garboard.physics.pipe.Bore;
import garboard.physics.pipe.HoseSize;
import garboard.practice.Figures;
import garboard.quantity.Speed;
import garboard.quantity.VolumeFlow;

/** Velocity of the pump's rated flow in a hose, and the hose in which it would be low enough. */
final class HoseVelocity {

    private HoseVelocity() {
    }

    static Speed of(Situation<WaterHoseRun> s) {
        return Bore.velocity(flow(s), s.subject().getBore());
    }

    static String inWords(Situation<WaterHoseRun> s) {
        return Figures.both(flow(s)) + " in a bore of " + Figures.both(s.subject().getBore()) + " moves at " + Figures.both(of(s));
    }

    static Optional<Remedy> largerHose(Situation<WaterHoseRun> s, Speed design) {
        return HoseSize.atLeast(Bore.forVelocity(flow(s), design))
            .map(size -> Remedy.of("Fit hose of " + size.name() + " bore, in which the water moves at "
                + Figures.both(Bore.velocity(flow(s), size.bore()))).setting(s.subject(), WATER_HOSE_RUN__BORE, size.bore()));
    }

    private static VolumeFlow flow(Situation<WaterHoseRun> s) {
        return s.record().getRawWater().getPump().getRatedFlow();
    }
}
