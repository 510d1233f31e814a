// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSupply;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** No valve can shut the return off. */
final class ReturnCannotDeadHead {

    private ReturnCannotDeadHead() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-RETURN-FREE", FuelSupply.class)
            .title("No valve can shut the return line")
            .why("A shut return bursts its hose or the injection pump's seals and sprays fuel.")
            .basis(Sources.GERR)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("no valve, or none that can stop the flow altogether")
            .applies(Conditions.asked(FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD))
            .needs(FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD)
            .holds(s -> Answers.no(s.subject().getReturnCanDeadHead(), "nothing can shut the return off",
                "a valve can shut the return off"))
            .remedy("Take the valve out of the return, or placard and lock it open")
            .build();
    }
}
