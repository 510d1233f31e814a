// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.VENTILATION__COMPARTMENT_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DESIGN_AMBIENT;
import static garboard.model.GarboardPackage.Literals.VENTILATION__OUTSIDE_TEMPERATURE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.MakerLimits;
import garboard.model.Ventilation;
import garboard.quantity.Temperature;

/** The compartment stays below what its parts bear, on the hottest day too. */
final class CompartmentTemperature {

    private static final Temperature LIMIT = Temperature.of(50, "degC");

    private CompartmentTemperature() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-COMPARTMENT-TEMPERATURE", Ventilation.class)
            .title("Compartment is not too hot for what is in it")
            .why("Electronics, windings and hoses are built for 50 degC around them.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 50 degC (122 degF), carried over to the design ambient, or the maker's figure")
            .needs(VENTILATION__COMPARTMENT_TEMPERATURE)
            .uses(VENTILATION__OUTSIDE_TEMPERATURE, VENTILATION__DESIGN_AMBIENT, MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE)
            .holds(s -> {
                Temperature inside = s.subject().getCompartmentTemperature();
                return Comparison.atMost(OutsideAir.inWords("the compartment", inside, s.subject()),
                    OutsideAir.onHottestDay(inside, s.subject()),
                    Limit.makerOr(s.maker(MakerLimits::getMaximumCompartmentTemperature), LIMIT, "common practice"));
            })
            .remedy("More air through the compartment, and lag what is hot in it")
            .build();
    }
}
