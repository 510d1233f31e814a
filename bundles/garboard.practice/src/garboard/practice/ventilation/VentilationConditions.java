// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.VENTILATION__CRANKING_MOTOR_FITTED;
import static garboard.model.GarboardPackage.Literals.VENTILATION__NATURAL_DRAUGHT;
import static garboard.model.GarboardPackage.Literals.VENTILATION__NET_VOLUME;
import static garboard.model.GarboardPackage.Literals.VENTILATION__OPEN_AREA_TO_ATMOSPHERE;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Condition;
import garboard.model.Answer;
import garboard.physics.air.Ventilation33Cfr183;
import garboard.quantity.Area;

/** When checks of the ventilation apply. */
final class VentilationConditions {

    private VentilationConditions() {
    }

    /** A compartment that is open enough needs no ventilation: 33 CFR 183.605. */
    static Condition<EObject> closedToAtmosphere() {
        return Condition.when("compartments open by less than 15 in2 for each ft3 (0.34 m2 for each m3)")
            .known(path(VENTILATION__NET_VOLUME), path(VENTILATION__OPEN_AREA_TO_ATMOSPHERE)).test(s -> {
                var ventilation = s.record().getVentilation();
                Area open = Ventilation33Cfr183.openToAtmosphere(ventilation.getNetVolume());
                // Exactly 15 in2 for each ft3 is open, also where it was given in metric units.
                return ventilation.getOpenAreaToAtmosphere().si() < open.si() * (1 - 1e-9);
            }, "the compartment is open to the atmosphere");
    }

    /** An engine that is cranked by hand needs no blower: 33 CFR 183.610(a). */
    static Condition<EObject> crankingMotorFitted() {
        return Condition.when("engines with a cranking motor").known(path(VENTILATION__CRANKING_MOTOR_FITTED)).test(
            s -> s.record().getVentilation().getCrankingMotorFitted() == Answer.YES, "the engine has no cranking motor");
    }

    /** There is a fan whose flow can be judged. */
    static Condition<EObject> fanDriven() {
        return Condition.when("compartments ventilated by a fan").known(path(VENTILATION__NATURAL_DRAUGHT)).test(
            s -> s.record().getVentilation().getNaturalDraught() != Answer.YES, "the compartment is ventilated by natural draught");
    }
}
