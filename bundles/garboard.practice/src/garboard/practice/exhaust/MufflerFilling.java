// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__SECTIONS;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER;
import static garboard.model.GarboardPackage.Literals.MUFFLER__VOLUME_TO_INLET;

import garboard.checks.FeaturePath;
import garboard.model.Answer;
import garboard.model.ExhaustRun;
import garboard.model.ExhaustSectionRun;
import garboard.physics.exhaust.DrainBack;
import garboard.physics.pipe.PipeRun;
import garboard.quantity.Volume;

/** What a muffler has to take up when the set stops, read from the record. */
final class MufflerFilling {

    private MufflerFilling() {
    }

    /** What has to be entered in any case: the muffler's volume, and of each part whether it slopes back. */
    static FeaturePath[] inputs() {
        return new FeaturePath[] { path(MUFFLER__VOLUME_TO_INLET), path(EXHAUST_RUN__SECTIONS, EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER) };
    }

    /** What has to be entered of the parts that slope back, where there are any. */
    static FeaturePath[] inputsOfWhatDrainsBack() {
        return new FeaturePath[] { slopingBack().then(EXHAUST_SECTION_RUN__BORE), slopingBack().then(EXHAUST_SECTION_RUN__LENGTH) };
    }

    static boolean anyDrainsBack(ExhaustRun exhaust) {
        return exhaust.getSections().stream().anyMatch(MufflerFilling::slopesBack);
    }

    /** What runs back into the muffler, as if every part that slopes back were full. */
    static Volume draining(ExhaustRun exhaust) {
        return DrainBack.of(exhaust.getSections().stream().filter(MufflerFilling::slopesBack)
            .map(run -> PipeRun.ofBore(run.getBore()).withLength(run.getLength())).toList());
    }

    /** The residue is the muffler's own where it is entered, else the usual one. */
    static DrainBack of(ExhaustRun exhaust) {
        DrainBack filling = DrainBack.into(exhaust.getMuffler().getVolumeToInlet()).from(draining(exhaust));
        return exhaust.getMuffler().getResidueFraction() == null ? filling : filling.withResidue(exhaust.getMuffler().getResidueFraction());
    }

    private static FeaturePath slopingBack() {
        return path(EXHAUST_RUN__SECTIONS).where(ExhaustSectionRun.class, MufflerFilling::slopesBack);
    }

    private static boolean slopesBack(ExhaustSectionRun run) {
        return run.getSlopesBackToMuffler() == Answer.YES;
    }
}
