// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__PUMP_FLOW;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.FuelSupply;
import garboard.physics.fuel.FuelLine;
import garboard.practice.Figures;

/** The lines from tank to pump lose little, with cold fuel too. */
final class LineDrop {

    private LineDrop() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-LINE-DROP", FuelSupply.class)
            .title("Fuel lines lose little with cold fuel")
            .why("Diesel at freezing point is twice as thick as in summer; a thin line that just did starves the set then.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("at most 3 kPa (1 inHg) from tank to pump at the pump's flow, fuel at 0 degC")
            .needs(path(FUEL_SUPPLY__PUMP_FLOW), path(GENERATOR_SET__FUEL), SuctionLines.lines().then(FUEL_LINE_RUN__BORE),
                SuctionLines.lines().then(FUEL_LINE_RUN__LENGTH))
            .uses(SuctionLines.function())
            .holds(s -> Comparison.atMost("the lines drop " + Figures.both(SuctionLines.drop(s)) + " at "
                + Figures.both(s.subject().getPumpFlow()), SuctionLines.drop(s), Limit.of(FuelLine.USUAL_GREATEST_DROP, "common practice")))
            .remedy("Fit lines of the next larger bore", s -> SuctionLines.widen(s, FuelLine.USUAL_GREATEST_DROP))
            .build();
    }
}
