// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__ACCESS_FOR_SERVICE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Mounting;
import garboard.practice.Answers;

/** The set can be got at: everything but authority. */
final class Access {

    private Access() {
    }

    static Check.Builder<Mounting> check(String id) {
        return Check.check(id, Mounting.class)
            .why("What cannot be reached is not looked after: impeller, filters and anode are left until they fail.")
            .gravity(Gravity.DEFECT)
            .limit("oil, filters, impeller, belt and anode can be reached without taking the set out")
            .needs(MOUNTING__ACCESS_FOR_SERVICE)
            .holds(s -> Answers.demanded(s.subject().getAccessForService(), "all service points can be reached", "a service point cannot be reached"))
            .remedy("Cut an opening with a lid where the service point is, or lead it to where it can be reached");
    }
}
