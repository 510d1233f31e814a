// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SHAFT_POWER;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_VENTILATION_AREA;
import static garboard.model.GarboardPackage.Literals.VENTILATION__SUPPLY_AREA_TOTAL;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.MakerLimits;
import garboard.model.Ventilation;
import garboard.physics.air.VentAreaByGerr;
import garboard.practice.Figures;
import garboard.practice.MakersLimit;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Area;

/** The rule of thumb for vent area by power, or the maker's area. */
final class VentArea {

    private VentArea() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-AREA-RULE", Ventilation.class)
            .title("Vent area follows the rule of thumb for the power")
            .why("It is the least that engines breathe through; carrying heat away by natural draught takes about ten times as much.")
            .basis(Sources.GERR_CH_16.othersSay("in metric 2.6 cm2 for each kW, 1 % less; 20 % more where ducts are tortuous"))
            .gravity(Gravity.ADVICE)
            .limit("1 in2 for each 3.3 hp of the set (2.6 cm2 for each kW), other machines in the space on top; or the maker's area")
            .applies(SteppingBack.where(CombustionAirInlet.check()))
            .uses(MAKER_LIMITS__MINIMUM_VENTILATION_AREA)
            .needsWhen(s -> makersArea(s).isEmpty(), path(GENERATOR_SET__SHAFT_POWER))
            .needs(VENTILATION__SUPPLY_AREA_TOTAL)
            .holds(s -> Comparison.atLeast("the inlets have " + Figures.both(s.subject().getSupplyAreaTotal()),
                s.subject().getSupplyAreaTotal(), limit(s)))
            .remedy("Enlarge the vents", s -> {
                Area wanted = Rounding.up(limit(s).value(), 1, "cm2");
                return Optional.of(Remedy.of("Enlarge the vents to " + Figures.both(wanted) + ", a fifth more where the ducts are tortuous")
                    .setting(s.subject(), VENTILATION__SUPPLY_AREA_TOTAL, wanted));
            })
            .build();
    }

    private static Limit<Area> limit(Situation<Ventilation> s) {
        return MakersLimit.or(makersArea(s), () -> Limit.of(VentAreaByGerr.inches(s.set().getShaftPower()), "Gerr ch. 16, hp / 3.3"));
    }

    private static Optional<Area> makersArea(Situation<Ventilation> s) {
        return s.maker(MakerLimits::getMinimumVentilationArea);
    }
}
