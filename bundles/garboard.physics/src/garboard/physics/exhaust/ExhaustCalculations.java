// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import garboard.physics.Source;
import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Inputs;
import garboard.physics.calculation.Parameter;
import garboard.physics.fuel.Combustion;
import garboard.physics.pipe.Bore;
import garboard.physics.pipe.EquivalentLength;
import garboard.physics.pipe.HoseSize;
import garboard.physics.pipe.PipeLoss;
import garboard.physics.pipe.PipeRun;
import garboard.physics.pipe.PressureBudget;
import garboard.physics.pipe.SeaWater;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.MassFlow;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.Temperature;
import garboard.quantity.VolumeFlow;

/** Gas, back pressure and lift as named calculations; muffler and cranking are in {@link MufflerCalculations}. */
public final class ExhaustCalculations {

    private static final Parameter<Power> SHAFT = Parameter.of("shaft-power", Power.class, "power at the engine's shaft");
    private static final Parameter<SpecificConsumption> CONSUMPTION =
        Parameter.of("specific-consumption", SpecificConsumption.class, "fuel for a unit of shaft energy").orElse("250 g/kWh");
    private static final Parameter<Ratio> AIR_FUEL = Parameter.of("air-fuel-ratio", Ratio.class, "mass of air to mass of fuel").orElse("22");
    private static final Parameter<MassFlow> GAS = Parameter.of("gas-flow", MassFlow.class, "exhaust gas, as a mass flow");
    private static final Parameter<Temperature> TEMPERATURE = Parameter.of("gas-temperature", Temperature.class, "gas temperature in the section");
    private static final Parameter<Length> BORE = Parameter.of("bore", Length.class, "inside diameter");
    private static final Parameter<Length> STRAIGHT = Parameter.of("straight-length", Length.class, "length of the straight parts");
    private static final Parameter<Integer> STANDARD_90 = bends("standard-90", "bends of 90 deg, radius one bore");
    private static final Parameter<Integer> LONG_90 = bends("long-90", "bends of 90 deg, radius one and a half bores or more");
    private static final Parameter<Integer> STANDARD_45 = bends("standard-45", "bends of 45 deg");
    private static final Parameter<Integer> SQUARE_90 = bends("square-90", "square elbows");
    private static final Parameter<BackPressureForm> FORM =
        Parameter.choice("form", BackPressureForm.class, "which of the published forms").orElse("metric");
    private static final Parameter<PressureDifference> LIMIT = Parameter.of("limit", PressureDifference.class, "greatest loss or back pressure");
    private static final Parameter<Length> LIFT = Parameter.of("lift", Length.class, "from the bottom of the canister to the highest point");
    private static final Parameter<Ratio> HOLD_UP =
        Parameter.of("hold-up", Ratio.class, "part of the riser that is water: 0 blown empty, 1 solid column").orElse("1");
    private static final Parameter<Ratio> MULTIPLIER =
        Parameter.of("multiplier", Ratio.class, "what water makes of the loss of gas alone, 1 to 10").orElse("2");
    private static final Parameter<PressureDifference> SILENCERS =
        Parameter.of("silencer-loss", PressureDifference.class, "loss of muffler and separator, from their data").orElse("0 kPa");
    private static final Parameter<Temperature> DRY_TEMPERATURE =
        Parameter.of("dry-temperature", Temperature.class, "gas before injection").orElse("450 degC");
    private static final Parameter<Length> DRY_BORE = Parameter.of("dry-bore", Length.class, "bore of the dry section");
    private static final Parameter<Length> DRY_LENGTH =
        Parameter.of("dry-length", Length.class, "length of the dry section with the equivalent length of its bends");
    private static final Parameter<Temperature> WET_TEMPERATURE =
        Parameter.of("wet-temperature", Temperature.class, "gas after injection").orElse("60 degC");
    private static final Parameter<Length> WET_BORE = Parameter.of("wet-bore", Length.class, "bore of the wet hose");
    private static final Parameter<Length> WET_LENGTH =
        Parameter.of("wet-length", Length.class, "length of the wet hose with the equivalent length of its bends");

    private static final String[] PRESSURES = {"kPa", "inHg", "psi"};
    private static final String[] LENGTHS = {"m", "ft"};
    private static final String GAS_RANGE = "gas of -50 to 900 degC at 1 atm, taken as air";

    private ExhaustCalculations() {
    }

    public static List<Calculation> all() {
        return Stream.concat(Stream.of(shaftPower(), gasFlow(), gasVolume(), backPressure(), roughBackPressure(), leastBore(), liftColumn(),
            leastHoldUp(), budget(), greatestLift(), leastWetBore(), wetBore(), longRun(), drift()), MufflerCalculations.all().stream()).toList();
    }

    private static Calculation shaftPower() {
        Parameter<Power> electrical = Parameter.of("electrical-power", Power.class, "output of the set");
        Parameter<Ratio> efficiency = Parameter.of("alternator-efficiency", Ratio.class, "0.3 to 1").orElse("0.88");
        return Calculation.named("shaft-power", "Shaft power of a set").explained("The engine power behind an electrical output.")
            .takes(electrical, efficiency).by("P = P_el / efficiency").validFor("efficiency 0.3 to 1").from(Source.derived("conservation of energy"))
            .answers(in -> Answer.of("shaft power", Combustion.shaftPower(in.get(electrical), in.get(efficiency)), "kW", "hp"));
    }

    private static Calculation gasFlow() {
        return Calculation.named("exhaust-gas-flow", "Exhaust gas of an engine").explained("Fuel, air and exhaust of an engine as mass flows.")
            .takes(SHAFT, CONSUMPTION, AIR_FUEL).by("m = P BSFC (1 + AFR)").validFor("air-fuel ratio 5 to 100")
            .from(Source.derived("conservation of mass").noting("consumption and air-fuel ratio are typical figures where not given"))
            .answers(in -> {
                Combustion engine = new Combustion(in.get(SHAFT), in.get(CONSUMPTION), in.get(AIR_FUEL));
                return Answer.of("exhaust gas", engine.exhaustFlow(), "kg/s", "kg/h", "lb/h").and("fuel", engine.fuelFlow())
                    .and("air", engine.airFlow());
            });
    }

    private static Calculation gasVolume() {
        return Calculation.named("exhaust-gas-volume", "Volume flow of exhaust gas").explained("Volume flow and velocity of hot gas in a bore.")
            .takes(GAS, TEMPERATURE, BORE).by("Q = m / S, S = 352.05 / T").validFor(GAS_RANGE).from(Source.derived("ideal gas"))
            .answers(in -> {
                ExhaustSection section = ExhaustSection.of(in.get(BORE), in.get(TEMPERATURE));
                VolumeFlow flow = section.volumeFlow(in.get(GAS));
                return Answer.of("volume flow", flow, "m3/min", "ft3/min").and("density", section.density())
                    .and("velocity", Bore.velocity(flow, in.get(BORE)));
            });
    }

    private static Calculation backPressure() {
        return Calculation.named("exhaust-section-loss", "Loss of gas in an exhaust section")
            .explained("The loss of one section by a published form; the forms differ by their friction factor.")
            .takes(GAS, TEMPERATURE, BORE, STRAIGHT, STANDARD_90, LONG_90, STANDARD_45, SQUARE_90, FORM)
            .by("metric: dp[kPa] = 3.6e6 L[m] S[kg/m3] Q[m3/min]^2 / D[mm]^5").validFor(GAS_RANGE + "; smooth pipe")
            .from(Source.fromMemory("exhaust back pressure formula of the engine trade").noting("metric and inch form checked against each other"))
            .answers(in -> {
                ExhaustSection section = section(in, in.get(BORE));
                return Answer.of("loss", in.get(FORM).loss(section, section.volumeFlow(in.get(GAS))), PRESSURES)
                    .and("length with bends", section.effectiveLength(), LENGTHS).and("form", in.get(FORM).source().toString());
            });
    }

    private static Calculation roughBackPressure() {
        Parameter<Length> roughness = Parameter.of("roughness", Length.class, "height of the wall's roughness").orElse("0.5 mm");
        return Calculation.named("exhaust-section-loss-rough", "Loss of gas in a rough exhaust section")
            .explained("The loss of one section by Darcy and Weisbach, for small or sooted pipes.")
            .takes(GAS, TEMPERATURE, BORE, STRAIGHT, STANDARD_90, LONG_90, STANDARD_45, SQUARE_90, roughness)
            .by("dp = f L/D rho v^2 / 2, f by Colebrook").validFor(GAS_RANGE + "; roughness to 5 % of the bore")
            .from(Source.retrieved("White, Fluid Mechanics, ch. 6"))
            .answers(in -> {
                PipeLoss loss = BackPressure.darcy(section(in, in.get(BORE)), in.get(GAS), in.get(roughness));
                return Answer.of("loss", loss.total(), PRESSURES).and("friction factor", loss.frictionFactor(), "1")
                    .and("Reynolds number", loss.reynolds(), "1");
            });
    }

    private static Calculation leastBore() {
        return Calculation.named("exhaust-least-bore", "Least bore of an exhaust section")
            .explained("The bore that keeps a section to a loss of gas, and the hose size that has it.")
            .takes(GAS, TEMPERATURE, LIMIT, STRAIGHT, STANDARD_90, LONG_90, STANDARD_45, SQUARE_90)
            .by("metric form solved for the bore; bends grow with it").validFor("bores from 1 mm to 2 m")
            .from(Source.fromMemory("exhaust back pressure formula of the engine trade"))
            .answers(in -> sized(BackPressure.leastBore(section(in, Length.of(1)), in.get(GAS), in.get(LIMIT))));
    }

    private static Calculation liftColumn() {
        return Calculation.named("exhaust-lift-column", "Back pressure of a lift").explained("The pressure that lifts the exhaust water.")
            .takes(LIFT, HOLD_UP).by("p = rho g H x hold-up, rho = 1025 kg/m3").validFor("hold-up 0 to 1")
            .from(Source.derived("hydrostatics").noting("the hold-up is known only from measurement"))
            .answers(in -> Answer.of("pressure", LiftColumn.pressure(in.get(LIFT), in.get(HOLD_UP), SeaWater.CUSTOMARY_DENSITY), PRESSURES));
    }

    private static Calculation leastHoldUp() {
        Parameter<VolumeFlow> water = Parameter.of("water-flow", VolumeFlow.class, "injected water");
        Parameter<VolumeFlow> gas = Parameter.of("gas-volume-flow", VolumeFlow.class, "gas at its temperature in the hose");
        return Calculation.named("exhaust-least-hold-up", "Least hold-up of a riser")
            .explained("The part of the bore that water would fill if it ran as fast as the gas: a lower bound.")
            .takes(water, gas).by("Q_water / (Q_water + Q_gas)").validFor("gas flow more than 0").from(Source.derived("continuity"))
            .answers(in -> Answer.of("least hold-up", TwoPhaseFlow.ofGas(in.get(gas)).withWater(in.get(water)).leastHoldUp(), "%", "1"));
    }

    private static Calculation budget() {
        return Calculation.named("exhaust-back-pressure", "Back pressure of a wet exhaust")
            .explained("All that adds up to the back pressure, part by part.")
            .takes(GAS, DRY_BORE, DRY_LENGTH, DRY_TEMPERATURE, WET_BORE, WET_LENGTH, WET_TEMPERATURE, MULTIPLIER, SILENCERS, LIFT, HOLD_UP)
            .by("dry section + multiplier x wet hose + silencers + rho g H x hold-up").validFor(GAS_RANGE + "; smooth pipe")
            .from(Source.derived("sum of the parts").noting("multiplier and hold-up are common practice: a bracket, not a figure"))
            .answers(in -> {
                PressureBudget budget = exhaust(in, in.get(WET_BORE)).withLift(in.get(LIFT)).budget(in.get(GAS));
                Answer answer = Answer.of("back pressure", budget.total(), PRESSURES);
                for (PressureBudget.Part part : budget.parts()) {
                    answer = answer.and(part.cause(), part.pressure(), PRESSURES);
                }
                return answer.warning("On paper only: how much water hangs in the riser, a measurement has to tell.");
            });
    }

    private static Calculation greatestLift() {
        return Calculation.named("exhaust-greatest-lift", "Greatest lift within a back pressure")
            .explained("The lift that uses up what the rest of the run leaves of a limit.")
            .takes(GAS, LIMIT, DRY_BORE, DRY_LENGTH, DRY_TEMPERATURE, WET_BORE, WET_LENGTH, WET_TEMPERATURE, MULTIPLIER, SILENCERS, HOLD_UP)
            .by("H = (limit - dry - multiplier x wet - silencers) / (rho g x hold-up)").validFor("hold-up more than 0")
            .from(Source.derived("sum of the parts"))
            .answers(in -> orNone("greatest lift", exhaust(in, in.get(WET_BORE)).greatestLift(in.get(GAS), in.get(LIMIT))));
    }

    private static Calculation leastWetBore() {
        return Calculation.named("exhaust-least-wet-bore", "Least bore of the wet hose within a back pressure")
            .explained("The bore of the wet hose that uses up what the rest of the run leaves of a limit.")
            .takes(GAS, LIMIT, DRY_BORE, DRY_LENGTH, DRY_TEMPERATURE, WET_LENGTH, WET_TEMPERATURE, MULTIPLIER, SILENCERS, LIFT, HOLD_UP)
            .by("metric form solved for the bore of the wet hose").validFor("bores from 1 mm to 2 m").from(Source.derived("sum of the parts"))
            .answers(in -> exhaust(in, in.get(DRY_BORE)).withLift(in.get(LIFT)).leastWetBore(in.get(GAS), in.get(LIMIT))
                .map(ExhaustCalculations::sized).orElseGet(() -> none("bore")));
    }

    private static Calculation wetBore() {
        return Calculation.named("exhaust-wet-bore", "Wet bore for a dry bore").explained("The rule of thumb, and what it does to the loss.")
            .takes(DRY_BORE).by("1.4 x dry bore").validFor("bore more than 0").from(Source.retrieved("Gerr, Boat Mechanical Systems Handbook"))
            .answers(in -> Answer.of("wet bore", ExhaustBore.wetByGerr(in.get(DRY_BORE)))
                .and("loss against the same bore", ExhaustBore.lossFactorOf(Ratio.of(1.4)), "1")
                .and("factor that offsets a doubled loss", ExhaustBore.boreFactorFor(Ratio.of(2)), "1"));
    }

    private static Calculation longRun() {
        return Calculation.named("exhaust-length-in-bores", "Length of an exhaust run in bores")
            .explained("Whether a run is so long that its bore has to be enlarged or reckoned.")
            .takes(STRAIGHT, BORE).by("L / D").validFor("bore more than 0").from(Source.retrieved("Gerr, Boat Mechanical Systems Handbook"))
            .answers(in -> {
                Ratio bores = ExhaustBore.lengthInBores(PipeRun.ofBore(in.get(BORE)).withLength(in.get(STRAIGHT)));
                return Answer.of("length in bores", bores, "1")
                    .and("bore enlarged by 20 %", ExhaustBore.enlargedForLongRun(in.get(BORE)))
                    .warningIf(bores.isMoreThan(ExhaustBore.LONGEST_IN_BORES), "More than 60 bores: reckon the back pressure.");
            });
    }

    private static Calculation drift() {
        Parameter<GaugePressure> baseline = Parameter.of("baseline", GaugePressure.class, "back pressure when the set was commissioned");
        return Calculation.named("exhaust-back-pressure-action", "Back pressure to act on")
            .explained("The reading at which to look for soot, a collapsed hose or a stuck flap.").takes(baseline).by("1.25 x baseline")
            .validFor("baseline more than 0").from(Source.commonPractice())
            .answers(in -> Answer.of("act from", BackPressure.actionAt(in.get(baseline)), PRESSURES));
    }

    private static Parameter<Integer> bends(String name, String meaning) {
        return Parameter.wholeNumber(name, meaning).orElse("0");
    }

    private static ExhaustSection section(Inputs in, Length bore) {
        ExhaustSection section = ExhaustSection.of(bore, in.get(TEMPERATURE)).withStraight(in.get(STRAIGHT));
        section = plus(section, in.get(STANDARD_90), EquivalentLength.EXHAUST_STANDARD_90);
        section = plus(section, in.get(LONG_90), EquivalentLength.EXHAUST_LONG_90);
        section = plus(section, in.get(STANDARD_45), EquivalentLength.EXHAUST_STANDARD_45);
        return plus(section, in.get(SQUARE_90), EquivalentLength.EXHAUST_SQUARE_90);
    }

    private static ExhaustSection plus(ExhaustSection section, int count, EquivalentLength bend) {
        return count == 0 ? section : section.plus(count, bend);
    }

    private static WetExhaust exhaust(Inputs in, Length wetBore) {
        return WetExhaust.ofDry(ExhaustSection.of(in.get(DRY_BORE), in.get(DRY_TEMPERATURE)).withStraight(in.get(DRY_LENGTH)))
            .withWet(ExhaustSection.of(wetBore, in.get(WET_TEMPERATURE)).withStraight(in.get(WET_LENGTH)))
            .withMultiplier(in.get(MULTIPLIER)).withSilencers(in.get(SILENCERS)).withHoldUp(in.get(HOLD_UP));
    }

    private static Answer sized(Length bore) {
        return Answer.of("bore", bore).and("hose size", HoseSize.atLeast(bore).map(HoseSize::name).orElse("none"));
    }

    private static Answer orNone(String name, Optional<Length> found) {
        return found.map(length -> Answer.of(name, length, LENGTHS)).orElseGet(() -> none(name));
    }

    private static Answer none(String name) {
        return Answer.of(name, "none").warning("The rest of the run passes the limit alone.");
    }
}
