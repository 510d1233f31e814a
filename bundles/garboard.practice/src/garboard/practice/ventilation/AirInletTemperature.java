// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__AIR_INLET_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DESIGN_AMBIENT;
import static garboard.model.GarboardPackage.Literals.VENTILATION__OUTSIDE_TEMPERATURE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.Ventilation;
import garboard.quantity.Temperature;

/** The set breathes air that is not too hot. */
final class AirInletTemperature {

    private static final Temperature LIMIT = Temperature.of(45, "degC");

    private AirInletTemperature() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-AIR-INLET-TEMPERATURE", Ventilation.class)
            .title("Air at the set's inlet is not too hot")
            .why("Hot air is thin: the set loses power, smokes and runs hotter still.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 45 degC (113 degF), carried over to the design ambient")
            .needs(VENTILATION__AIR_INLET_TEMPERATURE)
            .uses(VENTILATION__OUTSIDE_TEMPERATURE, VENTILATION__DESIGN_AMBIENT)
            .holds(s -> {
                Temperature inlet = s.subject().getAirInletTemperature();
                return Comparison.atMost(OutsideAir.inWords("the air at the inlet", inlet, s.subject()),
                    OutsideAir.onHottestDay(inlet, s.subject()), Limit.of(LIMIT, "common practice"));
            })
            .remedy("Lead fresh air to the inlet of the set")
            .build();
    }
}
