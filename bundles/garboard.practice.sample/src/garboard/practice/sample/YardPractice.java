// SPDX-License-Identifier: EPL-2.0
package garboard.practice.sample;

import java.util.List;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Practice;

/** House rules of a made-up yard, stricter than common practice in two places. */
public final class YardPractice implements Practice {

    static final Basis HOUSE_RULES = Basis.handbook("House rules of a made-up yard, first edition", Basis.Status.RETRIEVED);

    @Override
    public String id() {
        return "sample-yard";
    }

    @Override
    public String name() {
        return "House rules of a made-up yard";
    }

    @Override
    public String appliesTo() {
        return "Installations of this yard. A sample of how a practice is contributed by a plug-in.";
    }

    @Override
    public List<Check<?>> checks() {
        return List.of(SeparatorBowlWithinReach.check(), RawWaterHosesDoublyClamped.check());
    }
}
