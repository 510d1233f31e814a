// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.TRANSFER_SWITCH__TESTED;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.TransferSwitch;
import garboard.practice.TestResults;

/** Somebody has tried to close both sources at once. */
final class SelectorTested {

    private SelectorTested() {
    }

    static Check<TransferSwitch> check() {
        return Check.check("AC-SELECTOR-TESTED", TransferSwitch.class)
            .title("Selection of the source was tried")
            .why("An interlock that was bent or left out shows only when somebody tries to defeat it.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("both sources live, double closure tried and prevented")
            .applies(AcConditions.shoreSupply())
            .needs(TRANSFER_SWITCH__TESTED)
            .holds(s -> TestResults.passed(s.subject().getTested(), "the selection of the source"))
            .remedy("With both sources live try to join them; a mechanical stop must prevent it")
            .build();
    }
}
