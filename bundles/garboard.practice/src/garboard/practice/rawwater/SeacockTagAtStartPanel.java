// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.RawWaterCircuit;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** A tag at the start panel tells whether the seacock is shut. */
final class SeacockTagAtStartPanel {

    private SeacockTagAtStartPanel() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("RAWWATER-SEACOCK-TAG", RawWaterCircuit.class)
            .title("Tag for the seacock hangs at the start panel")
            .why("A seacock that is shut for sailing is forgotten at the next start, and the set runs dry.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("a tag at the start panel that goes with the state of the seacock")
            .applies(Conditions.sailing())
            .applies(Conditions.asked(RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL))
            .needs(RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL)
            .holds(s -> Answers.yes(s.subject().getSeacockTagAtStartPanel(), "the start panel has a tag for the seacock",
                "the start panel has no tag for the seacock"))
            .remedy("Hang a tag at the start panel: seacock shut")
            .build();
    }
}
