// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTORS_IN_BUNDLE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_SIZE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__INSULATION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__IN_ENGINE_SPACE;

import java.util.Optional;

import garboard.checks.Condition;
import garboard.model.Answer;
import garboard.model.CableRun;
import garboard.model.InsulationRating;
import garboard.physics.OutOfRangeException;
import garboard.physics.cable.AmpacityIso;
import garboard.physics.cable.ConductorRun;
import garboard.physics.cable.ConductorSize;
import garboard.quantity.Current;

/** Permitted current by the annex of ISO 10133, for the sizes and ratings that it lists; insulation of 75 and 80 degC counts as 70 degC. */
final class IsoAnnex {

    private IsoAnnex() {
    }

    /** Nothing where the annex has no figure: American gauges, other sizes, and 60 or 200 degC in an engine space. */
    static Optional<Current> allowed(CableRun run, ConductorSize size) {
        ConductorRun alone = ConductorRun.of(size, rating(run.getInsulation()));
        try {
            return Optional.of(AmpacityIso.allowed((run.getInEngineSpace() == Answer.YES ? alone.withEngineSpace() : alone)
                .withCarryingTogether(run.getConductorsInBundle())));
        } catch (OutOfRangeException notListed) {
            return Optional.empty();
        }
    }

    /** The annex has a figure for the conductor as it is laid. */
    static Condition<CableRun> listed() {
        return Condition.<CableRun>when("conductors that the annex lists: metric sizes from 0.75 to 150 mm2")
            .known(path(CABLE_RUN__CONDUCTOR_SIZE), path(CABLE_RUN__INSULATION), path(CABLE_RUN__IN_ENGINE_SPACE),
                path(CABLE_RUN__CONDUCTORS_IN_BUNDLE))
            .test(s -> CableRuns.hasReadableSize(s.subject()) && allowed(s.subject(), CableRuns.size(s.subject())).isPresent(),
                "the annex has no figure for this conductor in this place");
    }

    private static garboard.physics.cable.InsulationRating rating(InsulationRating rating) {
        return switch (rating) {
            case C75, C80 -> garboard.physics.cable.InsulationRating.C70;
            default -> garboard.physics.cable.InsulationRating.valueOf(rating.name());
        };
    }
}
