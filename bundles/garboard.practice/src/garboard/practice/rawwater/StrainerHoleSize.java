// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.WATER_STRAINER__HOLE_SIZE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.WaterStrainer;
import garboard.practice.Figures;
import garboard.quantity.Length;

/** The holes of the basket stop what harms the impeller and do not choke on every leaf. */
final class StrainerHoleSize {

    private static final Length LEAST = Length.of(1.6, "mm");
    private static final Length GREATEST = Length.of(3, "mm");

    private StrainerHoleSize() {
    }

    static Check<WaterStrainer> check() {
        return Check.check("RAWWATER-STRAINER-HOLES", WaterStrainer.class)
            .title("Holes of the strainer basket are of a good size")
            .why("Wider holes let shell through to the heat exchanger; finer ones clog within a day.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("1.6 to 3 mm (1/16 to 1/8 in)")
            .needs(WATER_STRAINER__HOLE_SIZE)
            .holds(s -> Comparison.between("the holes measure " + Figures.both(s.subject().getHoleSize()), s.subject().getHoleSize(),
                Limit.of(LEAST, "common practice"), Limit.of(GREATEST, "common practice")))
            .remedy("Fit a basket with holes of 1.6 to 3 mm")
            .build();
    }
}
