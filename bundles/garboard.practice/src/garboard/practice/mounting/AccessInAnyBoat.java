// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.model.Mounting;
import garboard.practice.Conditions;

/** Access on any boat. */
final class AccessInAnyBoat {

    private AccessInAnyBoat() {
    }

    static Check<Mounting> check() {
        return Access.check("MOUNTING-ACCESS")
            .title("Service points can be reached")
            .basis(Basis.commonPractice())
            .applies(Conditions.unlessLawForPassengers("183.320(a)"))
            .build();
    }
}
