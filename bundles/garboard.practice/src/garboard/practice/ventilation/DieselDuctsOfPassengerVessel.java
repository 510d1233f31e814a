// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.VENTILATION__EXHAUST_AREA_TOTAL;
import static garboard.model.GarboardPackage.Literals.VENTILATION__SUPPLY_AREA_TOTAL;
import static garboard.model.GarboardPackage.Literals.VESSEL__BEAM;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Ventilation;
import garboard.physics.air.Ventilation46Cfr182;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Area;

/** 46 CFR 182.465: a diesel machinery space has inlet and outlet ducts by the beam of the vessel. */
final class DieselDuctsOfPassengerVessel {

    private static final int DUCTS = 2;

    private DieselDuctsOfPassengerVessel() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-DUCTS-182-465", Ventilation.class)
            .title("Diesel space has ducts by the vessel's beam (small passenger vessels)")
            .why("Without a way in and a way out the space overheats and fills with oil mist.")
            .basis(Sources.cfr46FromMemory("182.465")
                .othersSay("in metric 650 mm2 for each 300 mm of beam, 2.4 % more; still more where the ducts feed the engine"))
            .gravity(Gravity.DEFECT)
            .limit("at least 2 ducts; inlets together and outlets together 1 in2 for each foot of beam (21.2 cm2 for each metre)")
            .applies(Conditions.smallPassengerVessel())
            .applies(Conditions.dieselSet())
            .needs(path(VESSEL__BEAM), path(VENTILATION__SUPPLY_AREA_TOTAL), path(VENTILATION__EXHAUST_AREA_TOTAL), Ducts.function())
            .holds(DieselDuctsOfPassengerVessel::compare)
            .remedy("Enlarge the ducts", s -> Optional.of(remedy(s)))
            .build();
    }

    private static Comparison compare(Situation<Ventilation> s) {
        if (s.subject().getDucts().size() < DUCTS) {
            return Comparison.holds("there is one duct only", false);
        }
        Area supply = s.subject().getSupplyAreaTotal();
        Area exhaust = s.subject().getExhaustAreaTotal();
        boolean supplyIsLess = supply.isLessThan(exhaust);
        return Comparison.atLeast((supplyIsLess ? "the inlets have " : "the outlets have ") + Figures.both(supplyIsLess ? supply : exhaust)
            + ", for a beam of " + Figures.both(s.vessel().getBeam()), supplyIsLess ? supply : exhaust,
            Limit.of(least(s), "46 CFR 182.465"));
    }

    private static Remedy remedy(Situation<Ventilation> s) {
        Area wanted = Rounding.up(least(s), 1, "cm2");
        if (s.subject().getDucts().size() < DUCTS) {
            return Remedy.of("Fit a second duct: inlets and outlets take " + Figures.both(wanted) + " each");
        }
        return Remedy.of("Bring inlets and outlets to " + Figures.both(wanted) + " each")
            .setting(s.subject(), VENTILATION__SUPPLY_AREA_TOTAL, larger(s.subject().getSupplyAreaTotal(), wanted))
            .setting(s.subject(), VENTILATION__EXHAUST_AREA_TOTAL, larger(s.subject().getExhaustAreaTotal(), wanted));
    }

    private static Area least(Situation<Ventilation> s) {
        return Ventilation46Cfr182.leastDieselDuctArea(s.vessel().getBeam(), Ventilation46Cfr182.Figures.INCH);
    }

    private static Area larger(Area one, Area other) {
        return one.isLessThan(other) ? other : one;
    }
}
