// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__RAIL_PRESSURE;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__RAIL_PRESSURE_HIGH;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__RAIL_PRESSURE_LOW;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.FuelSupply;
import garboard.model.MakerLimits;
import garboard.practice.Figures;
import garboard.practice.MakersLimit;
import garboard.quantity.GaugePressure;

/** The rail of a port-injected gasoline set holds the usual pressure. */
final class RailPressure {

    private static final Limit<GaugePressure> LOW = Limit.of(GaugePressure.of(38, "psi"), "common practice");
    private static final Limit<GaugePressure> HIGH = Limit.of(GaugePressure.of(42, "psi"), "common practice");

    private RailPressure() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-RAIL-PRESSURE", FuelSupply.class)
            .title("Fuel rail pressure is in its range")
            .why("A low rail leans the set out and overheats it; a high one is a stuck regulator, rich and sooty.")
            .basis(Basis.commonPractice()
                .othersSay("the trade press prints 45 psi and more, 50 to 60 psi for other engines: the maker's range decides"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("38 to 42 psi (262 to 290 kPa), or the maker's range")
            .applies(FuelConditions.portInjectedGasoline())
            .needs(FUEL_SUPPLY__RAIL_PRESSURE)
            .uses(MAKER_LIMITS__RAIL_PRESSURE_LOW, MAKER_LIMITS__RAIL_PRESSURE_HIGH)
            .needsWhen(s -> s.maker(MakerLimits::getRailPressureHigh).isPresent(), path(MAKER_LIMITS__RAIL_PRESSURE_LOW))
            .needsWhen(s -> s.maker(MakerLimits::getRailPressureLow).isPresent(), path(MAKER_LIMITS__RAIL_PRESSURE_HIGH))
            .holds(s -> Comparison.between("the rail shows " + Figures.both(s.subject().getRailPressure()), s.subject().getRailPressure(),
                MakersLimit.or(s.maker(MakerLimits::getRailPressureLow), () -> LOW),
                MakersLimit.or(s.maker(MakerLimits::getRailPressureHigh), () -> HIGH)))
            .remedy("Prime again; then look at regulator, pump and filter; enter the maker's range where it is another")
            .build();
    }
}
