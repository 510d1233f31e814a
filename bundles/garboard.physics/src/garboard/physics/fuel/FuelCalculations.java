// SPDX-License-Identifier: EPL-2.0
package garboard.physics.fuel;

import java.util.List;

import garboard.physics.Source;
import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Inputs;
import garboard.physics.calculation.Parameter;
import garboard.physics.pipe.Fluid;
import garboard.physics.pipe.Medium;
import garboard.physics.pipe.PipeRun;
import garboard.physics.pipe.PressureBudget;
import garboard.quantity.Density;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/** The fuel system as named calculations. */
public final class FuelCalculations {

    private static final Parameter<Power> SHAFT = Parameter.of("shaft-power", Power.class, "power at the engine's shaft");
    private static final Parameter<SpecificConsumption> CONSUMPTION =
        Parameter.of("specific-consumption", SpecificConsumption.class, "fuel for a unit of shaft energy").orElse("250 g/kWh");
    private static final Parameter<FuelOil> FUEL = Parameter.choice("fuel", FuelOil.class, "kind of fuel").orElse("diesel");
    private static final Parameter<Temperature> TEMPERATURE = Parameter.of("temperature", Temperature.class, "of the fuel").orElse("15 degC");
    private static final Parameter<VolumeFlow> BURN = Parameter.of("burn", VolumeFlow.class, "fuel burnt");
    private static final Parameter<VolumeFlow> PUMP_FLOW = Parameter.of("flow", VolumeFlow.class, "what the pump moves: burn and return");
    private static final Parameter<Ratio> USABLE = Parameter.of("usable-part", Ratio.class, "part of the tank that can be drawn").orElse("90 %");
    private static final Parameter<Length> BORE = Parameter.of("bore", Length.class, "bore of the line");
    private static final Parameter<Length> LENGTH = Parameter.of("length", Length.class, "length of the line");
    private static final Parameter<Ratio> FITTINGS =
        Parameter.of("loss-coefficient", Ratio.class, "sum of the loss coefficients K of the fittings").orElse("0");
    private static final Parameter<Length> HEIGHT = Parameter.of("height", Length.class, "height of the column");
    private static final Parameter<Length> LIFT = Parameter.of("lift", Length.class, "from the lowest fuel level up to the pump, down negative");
    private static final Parameter<PressureDifference> FILTER =
        Parameter.of("filter-loss", PressureDifference.class, "loss of the clean filter").orElse("0 kPa");
    private static final Parameter<PressureDifference> VALVE =
        Parameter.of("valve-pressure", PressureDifference.class, "opening pressure of an anti-siphon valve").orElse("0 kPa");

    private static final String[] SUCTION = {"kPa", "inHg"};
    private static final String[] RATES = {"L/h", "gal/h"};
    private static final Source WHITE = Source.retrieved("White, Fluid Mechanics, ch. 6 (Hagen and Poiseuille, Darcy and Weisbach)");

    /** The fuels. */
    enum FuelOil {
        DIESEL(Medium.DIESEL), GASOLINE(Medium.GASOLINE);

        private final Medium medium;

        FuelOil(Medium medium) {
            this.medium = medium;
        }
    }

    private FuelCalculations() {
    }

    public static List<Calculation> all() {
        return List.of(burn(), burnByGerr(), endurance(), leastTank(), separator(), column(), lineDrop(), leastBore(), suction(), hosePressure(),
            leakTest(), leakHold(), severedHose(), fillOverflow(), fillingPressure(), spudFit(), typicalEngine());
    }

    private static Calculation burn() {
        Parameter<Ratio> airFuel = Parameter.of("air-fuel-ratio", Ratio.class, "mass of air to mass of fuel").orElse("22");
        return Calculation.named("fuel-burn", "Fuel burnt").explained("What an engine burns at a shaft power.")
            .takes(SHAFT, CONSUMPTION, airFuel, FUEL, TEMPERATURE).by("Q = P BSFC / rho").validFor("fuel of 0 to 40 degC")
            .from(Source.derived("conservation of mass").noting("the specific consumption is a typical figure where not given"))
            .answers(in -> {
                Combustion engine = new Combustion(in.get(SHAFT), in.get(CONSUMPTION), in.get(airFuel));
                return Answer.of("burn", FuelEndurance.burn(engine, density(in)), RATES).and("as a mass flow", engine.fuelFlow());
            });
    }

    private static Calculation burnByGerr() {
        return Calculation.named("fuel-burn-rule", "Diesel burnt by rule of thumb").explained("The handbook's figure, for a quick look.")
            .takes(SHAFT).by("0.054 US gal for each horsepower hour").validFor("diesel; small sets at part load burn more")
            .from(Source.retrieved("Gerr, Boat Mechanical Systems Handbook"))
            .answers(in -> Answer.of("burn", FuelEndurance.dieselBurnByGerr(in.get(SHAFT)), RATES));
    }

    private static Calculation endurance() {
        Parameter<Volume> tank = Parameter.of("tank-volume", Volume.class, "capacity of the tank");
        return Calculation.named("fuel-endurance", "How long a tank lasts").explained("Running time on what can be drawn from a tank.")
            .takes(tank, USABLE, BURN).by("t = V x usable / burn").validFor("usable part 0 to 1")
            .from(Source.derived("volumes").noting("a usable part of 90 % is common practice"))
            .answers(in -> Answer.of("lasts", FuelEndurance.lasts(in.get(tank), in.get(USABLE), in.get(BURN)), "h"));
    }

    private static Calculation leastTank() {
        Parameter<TimeSpan> planned = Parameter.of("planned-time", TimeSpan.class, "planned running time");
        Parameter<Ratio> reserve = Parameter.of("reserve", Ratio.class, "over the planned time").orElse("20 %");
        return Calculation.named("fuel-least-tank", "Least tank for a running time").explained("The tank that lasts a time with a reserve.")
            .takes(planned, BURN, USABLE, reserve).by("V = t (1 + reserve) burn / usable").validFor("usable part more than 0, to 1")
            .from(Source.derived("volumes").noting("usable part and reserve are common practice"))
            .answers(in -> Answer.of("tank", FuelEndurance.leastTank(in.get(planned), in.get(BURN),
                FuelEndurance.Shares.usual().withUsable(in.get(USABLE)).withReserve(in.get(reserve)))));
    }

    private static Calculation separator() {
        Parameter<SeparatorFlow> engine = Parameter.choice("engine", SeparatorFlow.class, "kind of engine").orElse("diesel");
        return Calculation.named("separator-rating", "Rated flow of a fuel-water separator")
            .explained("The flow a separator has to be rated for where the pump's flow is not known.").takes(SHAFT, engine)
            .by("0.18 US gal/h for each horsepower; gasoline without return 0.10").validFor("gasoline with return: the pump's data")
            .from(Source.retrieved("filter trade council; Gerr, Boat Mechanical Systems Handbook"))
            .answers(in -> Answer.of("rated flow", in.get(engine).least(in.get(SHAFT)), RATES));
    }

    private static Calculation column() {
        return Calculation.named("fuel-column", "Pressure of a column of fuel")
            .explained("Pressure to lift fuel; also what an anti-siphon valve has to hold against a drop.").takes(HEIGHT, FUEL, TEMPERATURE)
            .by("p = rho g h").validFor("fuel of 0 to 40 degC").from(Source.derived("hydrostatics"))
            .answers(in -> Answer.of("pressure", FuelLine.head(density(in), in.get(HEIGHT)), "kPa", "inHg", "psi"));
    }

    private static Calculation lineDrop() {
        return Calculation.named("fuel-line-drop", "Pressure drop of a fuel line").explained("What the pump's flow loses in the line.")
            .takes(PUMP_FLOW, BORE, LENGTH, FITTINGS, FUEL, TEMPERATURE).by("laminar: 128 mu L Q / (pi D^4); turbulent: Darcy and Weisbach")
            .validFor("fuel of 0 to 40 degC, smooth bore").from(WHITE)
            .answers(in -> {
                PressureDifference drop = FuelLine.drop(line(in, in.get(BORE)), in.get(PUMP_FLOW), fluid(in));
                return Answer.of("drop", drop, SUCTION)
                    .warningIf(drop.isMoreThan(FuelLine.USUAL_GREATEST_DROP), "More than 3 kPa (common practice).");
            });
    }

    private static Calculation leastBore() {
        Parameter<PressureDifference> most = Parameter.of("pressure-loss", PressureDifference.class, "greatest drop").orElse("3 kPa");
        return Calculation.named("fuel-line-least-bore", "Least bore of a fuel line").explained("The bore that keeps to a drop.")
            .takes(PUMP_FLOW, most, LENGTH, FITTINGS, FUEL, TEMPERATURE).by("drop solved for the bore").validFor("bores from 1 mm to 2 m").from(WHITE)
            .answers(in -> Answer.of("bore", FuelLine.leastBore(line(in, Length.of(1)), in.get(PUMP_FLOW), in.get(most), fluid(in))));
    }

    private static Calculation suction() {
        return Calculation.named("fuel-suction", "Suction at the fuel pump").explained("Lift, line, filter and valve, part by part.")
            .takes(PUMP_FLOW, LIFT, BORE, LENGTH, FITTINGS, FILTER, VALVE, FUEL, TEMPERATURE).by("rho g lift + line + filter + valve")
            .validFor("fuel of 0 to 40 degC, smooth bore").from(WHITE)
            .answers(in -> {
                PressureBudget devices = PressureBudget.empty().plus("filter", in.get(FILTER)).plus("anti-siphon valve", in.get(VALVE));
                PressureDifference line = FuelLine.drop(line(in, in.get(BORE)), in.get(PUMP_FLOW), fluid(in));
                PressureBudget suction = FuelLine.suction(density(in), in.get(LIFT), line, devices);
                Answer answer = Answer.of("suction", suction.total(), SUCTION);
                for (PressureBudget.Part part : suction.parts()) {
                    answer = answer.and(part.cause(), part.pressure(), SUCTION);
                }
                return answer.warningIf(suction.total().in("kPa") > 10, "More than 10 kPa with a clean filter (common practice).");
            });
    }

    private static Calculation hosePressure() {
        return Calculation.named("fuel-hose-pressure", "Working pressure of fuel hose").explained("What fuel hose to the ISO standards stands.")
            .takes(BORE).by("0.34 MPa to 10 mm bore, 0.25 MPa to 63 mm").validFor("bores to 63 mm")
            .from(Source.retrieved("ISO 7840:2021 and ISO 8469:2021, scope"))
            .answers(in -> Answer.of("working pressure", FuelHose.workingPressure(in.get(BORE)), "kPa", "psi"));
    }

    private static Calculation leakTest() {
        return Calculation.named("fuel-leak-test", "Pressure of the leak test").explained("The pressure a gasoline fuel system is tested at.")
            .takes(HEIGHT, FUEL, TEMPERATURE).by("the greater of 3 psi and 1.5 rho g h").validFor("fuel of 0 to 40 degC")
            .from(Source.retrieved("33 CFR 183.542").noting("the density of the fuel is not in the rule"))
            .answers(in -> Answer.of("test pressure", FuelSystem33Cfr183.leakTest(density(in), in.get(HEIGHT)), "kPa", "psi")
                .and("head up to which 3 psi will do", FuelSystem33Cfr183.headOfLeastTest(density(in)), "m", "ft"));
    }

    private static Calculation leakHold() {
        Parameter<Volume> tank = Parameter.of("tank-volume", Volume.class, "capacity of the tank");
        return Calculation.named("fuel-leak-test-time", "Time of the leak test").explained("How long the test pressure is held.").takes(tank)
            .by("5 min, and 1 min for each started 10 US gal above 50").validFor("tank more than 0")
            .from(Source.quoted("laboratory procedure issued with 33 CFR 183.542"))
            .answers(in -> Answer.of("hold", FuelSystem33Cfr183.leakTestHold(in.get(tank)), "min"));
    }

    private static Calculation severedHose() {
        Parameter<Volume> spilled = Parameter.of("spilled-volume", Volume.class, "what ran out of the cut hose");
        Parameter<TimeSpan> time = Parameter.of("time", TimeSpan.class, "in this time").orElse("2.5 min");
        return Calculation.named("fuel-severed-hose", "Severed hose").explained("Whether a cut hose spills little enough for the lower hose class.")
            .takes(spilled, time).by("5 fl oz in 2.5 min").validFor("time more than 0")
            .from(Source.retrieved("33 CFR 183.558(b)").noting("the rule says oz; fluid ounces are the usual reading"))
            .answers(in -> Answer.of("passes", FuelSystem33Cfr183.severedHosePasses(in.get(spilled), in.get(time)) ? "yes" : "no")
                .and("limit", FuelSystem33Cfr183.SEVERED_HOSE_LIMIT, "mL", "fl oz"));
    }

    private static Calculation fillOverflow() {
        Parameter<TimeSpan> time = Parameter.of("time", TimeSpan.class, "time of the overflow").orElse("5 s");
        return Calculation.named("fuel-fill-overflow", "Overflow of a fill test").explained("What has to be kept out of the boat.").takes(time)
            .by("5 US gal/min x time, 5 s at least").validFor("time 0 or more").from(Source.retrieved("33 CFR 183.564"))
            .answers(in -> Answer.of("volume", Volume.of(FuelSystem33Cfr183.FILL_OVERFLOW.si() * in.get(time).si()), "L", "gal"));
    }

    private static Calculation fillingPressure() {
        Parameter<GaugePressure> label = Parameter.of("label-pressure", GaugePressure.class, "test pressure on the tank's label");
        return Calculation.named("fuel-filling-pressure", "Greatest pressure while filling").explained("What a tank may see at its vent's worst.")
            .takes(label).by("0.80 x label").validFor("label more than 0").from(Source.retrieved("33 CFR 183.520"))
            .answers(in -> Answer.of("greatest pressure", FuelSystem33Cfr183.greatestFillingPressure(in.get(label)), "kPa", "psi"));
    }

    private static Calculation spudFit() {
        Parameter<Length> spud = Parameter.of("minor-diameter", Length.class, "minor outside diameter of the fitting");
        return Calculation.named("fuel-hose-fit", "How loosely a fuel hose may fit").explained("Most that the bore may exceed the fitting.")
            .takes(spud).by("0.020 in below 3/8 in, 0.035 in to 1 in, 0.065 in above").validFor("diameter more than 0")
            .from(Source.fromMemory("33 CFR 183.558(d), Table 8"))
            .answers(in -> Answer.of("greatest difference", FuelSystem33Cfr183.greatestHoseClearance(in.get(spud)), "in", "mm"));
    }

    private static Calculation typicalEngine() {
        Parameter<TypicalEngine> engine = Parameter.choice("engine", TypicalEngine.class, "kind of engine");
        return Calculation.named("typical-engine", "Typical figures of an engine").explained("Figures for where the set's own are not known.")
            .takes(engine).by("table").validFor("small engines at full load").from(TypicalEngine.SOURCE)
            .answers(in -> Answer.of("specific consumption", in.get(engine).consumption(), "g/kWh", "lb/(hp.h)")
                .and("air-fuel ratio", in.get(engine).airFuelRatio(), "1").and("exhaust before injection", in.get(engine).exhaustTemperature())
                .and("heat to the coolant", in.get(engine).coolantShare(), "%").and("heat to the space", in.get(engine).radiatedShare(), "%")
                .and("heating value", in.get(engine).heatingValue()).and("fuel density", in.get(engine).fuelDensity()));
    }

    private static PipeRun line(Inputs in, Length bore) {
        return PipeRun.ofBore(bore).withLength(in.get(LENGTH)).plusLoss(in.get(FITTINGS));
    }

    private static Fluid fluid(Inputs in) {
        return in.get(FUEL).medium.at(in.get(TEMPERATURE));
    }

    private static Density density(Inputs in) {
        return fluid(in).density();
    }
}
