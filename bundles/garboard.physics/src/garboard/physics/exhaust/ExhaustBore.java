// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import garboard.physics.Argument;
import garboard.physics.pipe.PipeRun;
import garboard.quantity.Length;
import garboard.quantity.Ratio;

/** Rules of thumb for the bore of an exhaust, and what they amount to. */
public final class ExhaustBore {

    /** Run over bore to which an enlarged hose does without reckoning. Gerr, Boat Mechanical Systems Handbook. */
    public static final Ratio LONGEST_IN_BORES = Ratio.of(60);

    private ExhaustBore() {
    }

    /** Wet bore about 1.4 times the dry one: Gerr, Boat Mechanical Systems Handbook. */
    public static Length wetByGerr(Length dryBore) {
        return Length.of(1.4 * Argument.positive("dry bore", dryBore));
    }

    /** Bore enlarged by 20 % for a long run: Gerr, Boat Mechanical Systems Handbook. */
    public static Length enlargedForLongRun(Length bore) {
        return Length.of(1.2 * Argument.positive("bore", bore));
    }

    /** Length over bore. */
    public static Ratio lengthInBores(PipeRun run) {
        return Ratio.of(run.length().si() / run.bore().si());
    }

    /** Length that is so many bores. */
    public static Length length(Ratio bores, Length bore) {
        return Length.of(Argument.notNegative("bores", bores) * Argument.positive("bore", bore));
    }

    /** Factor on the bore that offsets a factor on the loss, by loss ~ D^-5: f^(1/5). Derived here. */
    public static Ratio boreFactorFor(Ratio lossFactor) {
        return Ratio.of(Math.pow(Argument.positive("loss factor", lossFactor), 0.2));
    }

    /** What a factor on the bore does to the loss, by loss ~ D^-5. Derived here. */
    public static Ratio lossFactorOf(Ratio boreFactor) {
        return Ratio.of(Math.pow(Argument.positive("bore factor", boreFactor), -5));
    }
}
