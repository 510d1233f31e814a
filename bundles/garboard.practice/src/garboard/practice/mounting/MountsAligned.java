// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__MOUNTS_ALIGNED;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Mounting;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** Each mount carries its part. */
final class MountsAligned {

    private MountsAligned() {
    }

    static Check<Mounting> check() {
        return Check.check("MOUNTING-MOUNTS", Mounting.class)
            .title("Mounts are loaded alike")
            .why("A mount that is sheared or bottomed passes the shaking on to the hull, and tears.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("each mount loaded alike, rubber neither sheared nor bottomed, nuts locked")
            .applies(Conditions.asked(MOUNTING__MOUNTS_ALIGNED))
            .needs(MOUNTING__MOUNTS_ALIGNED)
            .holds(s -> Answers.yes(s.subject().getMountsAligned(), "the mounts are loaded alike", "a mount is sheared, bottomed or loose"))
            .remedy("Level the set on its mounts, and lock the nuts")
            .build();
    }
}
