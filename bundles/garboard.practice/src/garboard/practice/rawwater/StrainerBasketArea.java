// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__HOSES;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__SECTION;
import static garboard.model.GarboardPackage.Literals.WATER_STRAINER__BASKET_OPEN_AREA;

import java.util.Comparator;
import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.WaterHoseRun;
import garboard.model.WaterStrainer;
import garboard.physics.rawwater.OpenArea;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Area;
import garboard.quantity.Length;

/** The strainer's basket has three times the area of the hose. */
final class StrainerBasketArea {

    private StrainerBasketArea() {
    }

    static Check<WaterStrainer> check() {
        return Check.check("RAWWATER-STRAINER-BASKET", WaterStrainer.class)
            .title("Strainer basket is open enough")
            .why("A small basket is blocked by a handful of weed, and the set stops or overheats.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("open area of the basket at least 3 times that of the suction hose")
            .needs(path(WATER_STRAINER__BASKET_OPEN_AREA), SuctionLine.hoses().then(WATER_HOSE_RUN__BORE))
            .uses(path(RAW_WATER_CIRCUIT__HOSES, WATER_HOSE_RUN__SECTION))
            .holds(s -> Comparison.atLeast("the basket is open over " + Figures.in(s.subject().getBasketOpenArea(), "mm2", "in2"),
                s.subject().getBasketOpenArea(), Limit.of(least(s), "three times the area of the suction hose, common practice")))
            .remedy("Fit a larger strainer", s -> {
                Area wanted = Rounding.up(least(s), 10, "mm2");
                return Optional.of(Remedy.of("Fit a strainer with at least " + Figures.in(wanted, "mm2", "in2") + " of open basket")
                    .setting(s.subject(), WATER_STRAINER__BASKET_OPEN_AREA, wanted));
            })
            .build();
    }

    private static Area least(Situation<WaterStrainer> s) {
        Length widest = SuctionLine.hoses(s.record()).stream().map(WaterHoseRun::getBore).max(Comparator.naturalOrder()).orElseThrow();
        return OpenArea.leastBasket(widest);
    }
}
