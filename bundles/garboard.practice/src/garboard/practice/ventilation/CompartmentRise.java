// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE;
import static garboard.model.GarboardPackage.Literals.VENTILATION__COMPARTMENT_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.VENTILATION__OUTSIDE_TEMPERATURE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.Ventilation;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.TemperatureDifference;

/** The compartment does not get much warmer than the air outside. */
final class CompartmentRise {

    static final TemperatureDifference LIMIT = TemperatureDifference.of(16);

    private CompartmentRise() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-COMPARTMENT-RISE", Ventilation.class)
            .title("Compartment stays near the outside temperature")
            .why("Hot air costs power, bakes alternator and hoses, and boils gasoline in the lines.")
            .basis(Sources.MARINE_DIESEL_BASICS)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 16 K (30 degF) over the outside at full load, or the maker's figure")
            .needs(VENTILATION__COMPARTMENT_TEMPERATURE, VENTILATION__OUTSIDE_TEMPERATURE)
            .uses(MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE)
            .holds(s -> {
                TemperatureDifference rise = OutsideAir.rise(s.subject().getCompartmentTemperature(), s.subject());
                return Comparison.atMost("the compartment is " + Figures.both(rise) + " warmer than outside", rise, limit(s));
            })
            .remedy("Fit a fan; lead supply low and exhaust high, and keep the two apart")
            .build();
    }

    static Limit<TemperatureDifference> limit(Situation<Ventilation> s) {
        return Limit.makerOr(s.maker(MakerLimits::getMaximumCompartmentRise), LIMIT, "Marine Diesel Basics 1");
    }
}
