// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_FUEL_LINE_BORE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.FuelLineRun;
import garboard.model.MakerLimits;
import garboard.practice.Figures;
import garboard.quantity.Length;

/** A suction line is no narrower than the maker asks, or than is usual. */
final class LineBore {

    private static final Length LIMIT = Length.of(6, "mm");

    private LineBore() {
    }

    static Check<FuelLineRun> check() {
        return Check.check("FUEL-LINE-BORE", FuelLineRun.class)
            .among(SuctionLines::isSuction, path(FUEL_LINE_RUN__FUNCTION))
            .title("Fuel line is wide enough")
            .why("A thin line is blocked by the first lump of wax or sealant.")
            .basis(Basis.commonPractice().othersSay("6 to 10 mm (1/4 to 3/8 in) are usual"))
            .gravity(Gravity.DEFECT)
            .limit("at least 6 mm (1/4 in) from tank to pump, or the maker's least bore")
            .needs(FUEL_LINE_RUN__BORE)
            .uses(MAKER_LIMITS__MINIMUM_FUEL_LINE_BORE)
            .holds(s -> Comparison.atLeast("the bore is " + Figures.both(s.subject().getBore()), s.subject().getBore(), limit(s)))
            .remedy("Fit a wider line", s -> FuelHoseBore.atLeast(limit(s).value()).map(
                bore -> Remedy.of("Fit a line of at least " + Figures.both(bore) + " bore")
                    .setting(s.subject(), FUEL_LINE_RUN__BORE, bore)))
            .build();
    }

    private static Limit<Length> limit(Situation<FuelLineRun> s) {
        return Limit.makerOr(s.maker(MakerLimits::getMinimumFuelLineBore), LIMIT, "common practice");
    }
}
