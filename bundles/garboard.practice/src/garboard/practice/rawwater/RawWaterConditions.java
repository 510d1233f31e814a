// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__COOLING;
import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__KIND;
import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__POSITION;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.SEACOCK__KIND;
import static garboard.model.GarboardPackage.Literals.VESSEL__HULL_MATERIAL;
import static garboard.model.GarboardPackage.Literals.VESSEL__SERVICE;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__KIND;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Condition;
import garboard.model.Cooling;
import garboard.model.HullMaterial;
import garboard.model.HullPickUp;
import garboard.model.Point;
import garboard.model.StrainerPickUp;
import garboard.model.ValveKind;
import garboard.model.WaterHoseKind;
import garboard.model.WaterHoseRun;
import garboard.physics.rawwater.SeacockZone;
import garboard.practice.Conditions;

/** When checks of the raw-water circuit apply. */
final class RawWaterConditions {

    private static final Set<WaterHoseKind> RIGID = Set.of(WaterHoseKind.RIGID_METAL_PIPE, WaterHoseKind.RIGID_PLASTIC_PIPE);

    private RawWaterConditions() {
    }

    /** The set gives its heat to sea water that runs through it. */
    static Condition<EObject> cooledBySeaWater() {
        return Condition.when("sets cooled by sea water, through a heat exchanger or directly").known(path(GENERATOR_SET__COOLING))
            .test(s -> s.set().getCooling() != Cooling.KEEL_COOLED, "the set is keel-cooled");
    }

    /** There is a valve to speak of. */
    static Condition<EObject> seacockFitted() {
        return Condition.when("where a valve is fitted at the hull").known(path(SEACOCK__KIND))
            .test(s -> s.record().getRawWater().getSeacock().getKind() != ValveKind.NONE, "no valve is fitted at the hull");
    }

    /** A valve that the law for small passenger vessels asks for is told once, as law. */
    static Condition<HullPickUp> unlessPassengerLawAsksForAValve() {
        return Condition.<HullPickUp>when("unless 46 CFR 179.350 asks for a valve as law").known()
            .uses(path(VESSEL__SERVICE), path(HULL_PICK_UP__POSITION, POINT__Z))
            .test(s -> !Conditions.carriesPassengers(s) || s.optional(s.subject().getPosition(), Point::getZ)
                .filter(SeacockZone::below46Cfr179Line).isEmpty(), "46 CFR 179.350 asks for a valve here, as law");
    }

    /** Pipe is not clamped. Where the kind is not entered it may be a hose. */
    static Condition<WaterHoseRun> hose() {
        return Condition.<WaterHoseRun>when("hoses").known().uses(path(WATER_HOSE_RUN__KIND))
            .test(s -> !RIGID.contains(s.subject().getKind()), "this run is a rigid pipe");
    }

    /** A scoop that takes the water in with the speed of the boat. */
    static Condition<EObject> scoopFacesForward() {
        return Condition.when("scoops that face forward").known(path(HULL_PICK_UP__KIND)).test(
            s -> s.record().getRawWater().getPickUp().getKind() == StrainerPickUp.SCOOP_FACING_FORWARD,
            "the intake does not face forward");
    }

    /** Something with openings covers the intake on the outside. */
    static Condition<EObject> outsideStrainerFitted() {
        return Condition.when("where a grating or strainer covers the intake outside").known(path(HULL_PICK_UP__KIND)).test(
            s -> s.record().getRawWater().getPickUp().getKind() != StrainerPickUp.NONE, "nothing covers the intake outside");
    }

    /** Copper alloys and aluminium in one hull make a battery. */
    static Condition<EObject> aluminiumHull() {
        return Condition.when("aluminium hulls").known(path(VESSEL__HULL_MATERIAL))
            .test(s -> s.vessel().getHullMaterial() == HullMaterial.ALUMINIUM, "the hull is not of aluminium");
    }
}
