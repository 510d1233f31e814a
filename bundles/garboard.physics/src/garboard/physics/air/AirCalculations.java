// SPDX-License-Identifier: EPL-2.0
package garboard.physics.air;

import java.util.List;

import garboard.physics.Source;
import garboard.physics.air.Ventilation46Cfr182.Figures;
import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Parameter;
import garboard.physics.fuel.Combustion;
import garboard.quantity.Area;
import garboard.quantity.Density;
import garboard.quantity.Length;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/** Air and ventilation as named calculations. */
public final class AirCalculations {

    private static final Parameter<Power> SHAFT = Parameter.of("shaft-power", Power.class, "power at the engine's shaft");
    private static final Parameter<SpecificConsumption> CONSUMPTION =
        Parameter.of("specific-consumption", SpecificConsumption.class, "fuel for a unit of shaft energy").orElse("250 g/kWh");
    private static final Parameter<Ratio> AIR_FUEL = Parameter.of("air-fuel-ratio", Ratio.class, "mass of air to mass of fuel").orElse("22");
    private static final Parameter<Density> AIR = Parameter.of("air-density", Density.class, "of the air").orElse("1.184 kg/m3");
    private static final Parameter<Power> HEAT = Parameter.of("heat", Power.class, "heat given to the air of the compartment");
    private static final Parameter<TemperatureDifference> RISE =
        Parameter.of("rise", TemperatureDifference.class, "of the compartment over the outside").orElse("16 K");
    private static final Parameter<VolumeFlow> FLOW = Parameter.of("flow", VolumeFlow.class, "air flow");
    private static final Parameter<PressureDifference> DEPRESSION =
        Parameter.of("depression", PressureDifference.class, "pressure in the compartment below that outside").orElse("63 Pa");
    private static final Parameter<Ratio> LOSS =
        Parameter.of("loss-coefficient", Ratio.class, "K of the whole way in; 2.5 for louvre, bend and water trap").orElse("2.5");
    private static final Parameter<Density> WARM_AIR = Parameter.of("air-density", Density.class, "of the air").orElse("1.13 kg/m3");
    private static final Parameter<Area> AREA = Parameter.of("area", Area.class, "free area of the openings");
    private static final Parameter<Volume> NET =
        Parameter.of("net-volume", Volume.class, "net volume of the compartment, with those that open into it");
    private static final Parameter<Volume> SPACE = Parameter.of("volume", Volume.class, "volume of the space");
    private static final Parameter<Figures> FIGURES =
        Parameter.choice("figures", Figures.class, "which of the rule's two columns of figures").orElse("inch");
    private static final Parameter<Length> BEAM = Parameter.of("beam", Length.class, "beam of the vessel");

    private static final Source HEAT_BALANCE = Source.derived("conservation of energy").noting("air of 1.13 kg/m3 and 1.01 kJ/(kg.K)");
    private static final String GASOLINE_BOATS = "boats with gasoline engines; net volume more than 0";
    private static final String[] FLOWS = {"m3/min", "ft3/min", "m3/h"};
    private static final String[] AREAS = {"cm2", "in2"};

    private AirCalculations() {
    }

    public static List<Calculation> all() {
        return List.of(combustionAir(), compartmentHeat(), ventilation(), rise(), iso8861(), inletVelocity(), inletArea(), inletDepression(),
            ventArea(), blower(), pickUp(), naturalVentilation(), openToAtmosphere(), joined(), airChange(), exhaustDuct(), blowTime(), dieselDucts(),
            tankSpaceVent());
    }

    private static Calculation combustionAir() {
        return Calculation.named("combustion-air", "Combustion air").explained("What an engine breathes.")
            .takes(SHAFT, CONSUMPTION, AIR_FUEL, AIR).by("Q = P BSFC AFR / rho").validFor("air-fuel ratio 5 to 100")
            .from(Source.derived("conservation of mass")
                .noting("rules of thumb: 170 m3/h for 40 hp (Marine Diesel Basics 1), 2.5 ft3/min for each horsepower (trade)"))
            .answers(in -> Answer.of("air", CombustionAir.of(new Combustion(in.get(SHAFT), in.get(CONSUMPTION), in.get(AIR_FUEL)), in.get(AIR)),
                "m3/h", "ft3/min").and("by rule of thumb", CombustionAir.byHorsepower(in.get(SHAFT)), "m3/h", "ft3/min"));
    }

    private static Calculation compartmentHeat() {
        Parameter<Power> fuel = Parameter.of("fuel-power", Power.class, "power in the fuel");
        Parameter<Ratio> share = Parameter.of("radiated-share", Ratio.class, "of the fuel's power, usually 4 to 8 %").orElse("7 %");
        Parameter<Power> electrical = Parameter.of("electrical-power", Power.class, "output of an air-cooled alternator").orElse("0 kW");
        Parameter<Ratio> efficiency = Parameter.of("alternator-efficiency", Ratio.class, "0.3 to 1").orElse("0.88");
        return Calculation.named("compartment-heat", "Heat to the compartment").explained("What engine and alternator give to the air around them.")
            .takes(fuel, share, electrical, efficiency).by("share x fuel power + P_el (1/efficiency - 1)").validFor("efficiency 0.3 to 1")
            .from(Source.derived("conservation of energy").noting("the share is from memory; Marine Diesel Basics 1 has 7 %"))
            .answers(in -> Answer.of("heat", CompartmentHeat.of(in.get(fuel), in.get(share),
                new CompartmentHeat.Alternator(in.get(electrical), in.get(efficiency)))));
    }

    private static Calculation ventilation() {
        return Calculation.named("ventilation-flow", "Ventilation for a rise").explained("The least flow that keeps a compartment to a rise.")
            .takes(HEAT, RISE).by("Q = heat / (rho cp rise)").validFor("rise more than 0").from(HEAT_BALANCE)
            .answers(in -> Answer.of("flow", VentilationFlow.forRise(in.get(HEAT), in.get(RISE)), FLOWS));
    }

    private static Calculation rise() {
        return Calculation.named("compartment-rise", "Rise of a compartment").explained("How warm a compartment gets with a flow of air.")
            .takes(HEAT, FLOW).by("rise = heat / (rho cp Q)").validFor("flow more than 0").from(HEAT_BALANCE)
            .answers(in -> Answer.of("rise", VentilationFlow.rise(in.get(HEAT), in.get(FLOW))));
    }

    private static Calculation iso8861() {
        Parameter<VolumeFlow> combustion = Parameter.of("combustion-air", VolumeFlow.class, "what the engine breathes");
        return Calculation.named("engine-room-air", "Engine room air in the style of ISO 8861")
            .explained("Combustion and cooling air together, as reckoned for ships.").takes(combustion, HEAT)
            .by("Vc + max(0, Vh - 0.4 Vc), at least 1.5 Vc; Vh for a rise of 12.5 K").validFor("flow and heat 0 or more")
            .from(Source.fromMemory("ISO 8861"))
            .answers(in -> Answer.of("total", Iso8861Style.total(in.get(combustion), in.get(HEAT)), FLOWS)
                .and("for the heat", Iso8861Style.heatFlow(in.get(HEAT)), FLOWS));
    }

    private static Calculation inletVelocity() {
        return Calculation.named("air-inlet-flow", "Flow through an opening").explained("What a depression draws through an area.")
            .takes(AREA, DEPRESSION, LOSS, WARM_AIR).by("v = sqrt(2 dp / (K rho))").validFor("depression 0 or more")
            .from(Source.derived("loss coefficient").noting("K 2.5 and 63 Pa are common practice"))
            .answers(in -> {
                DuctOpening opening = new DuctOpening(in.get(LOSS), in.get(WARM_AIR));
                return Answer.of("flow", opening.flow(in.get(AREA), in.get(DEPRESSION)), FLOWS)
                    .and("velocity", opening.velocity(in.get(DEPRESSION)));
            });
    }

    private static Calculation inletArea() {
        return Calculation.named("air-inlet-area", "Least area for a flow").explained("The free area that lets a flow in at a depression.")
            .takes(FLOW, DEPRESSION, LOSS, WARM_AIR).by("A = Q / sqrt(2 dp / (K rho))").validFor("depression more than 0")
            .from(Source.derived("loss coefficient").noting("K 2.5 and 63 Pa are common practice"))
            .answers(in -> Answer.of("free area",
                new DuctOpening(in.get(LOSS), in.get(WARM_AIR)).leastArea(in.get(FLOW), in.get(DEPRESSION)), AREAS));
    }

    private static Calculation inletDepression() {
        return Calculation.named("compartment-depression", "Depression in a compartment").explained("What a flow through an area costs.")
            .takes(FLOW, AREA, LOSS, WARM_AIR).by("dp = K rho (Q/A)^2 / 2").validFor("area more than 0")
            .from(Source.derived("loss coefficient").noting("K 2.5 is common practice"))
            .answers(in -> Answer.of("depression", new DuctOpening(in.get(LOSS), in.get(WARM_AIR)).depression(in.get(FLOW), in.get(AREA)),
                "Pa", "inH2O"));
    }

    private static Calculation ventArea() {
        Parameter<Power> power = Parameter.of("power", Power.class, "shaft power of all machines in the space");
        return Calculation.named("vent-area-rule", "Vent area by rule of thumb").explained("The handbook's area for what the engines breathe.")
            .takes(power).by("in2 = hp / 3.3; cm2 = 2.6 kW; 20 % more for tortuous ducts").validFor("power more than 0")
            .from(Source.retrieved("Gerr, Boat Mechanical Systems Handbook, ch. 16")
                .noting("about a tenth of what carrying the heat away by natural draught needs"))
            .answers(in -> Answer.of("area, inch form", VentAreaByGerr.inches(in.get(power)), AREAS)
                .and("area, metric form", VentAreaByGerr.metric(in.get(power)), AREAS)
                .and("with tortuous ducts", VentAreaByGerr.forTortuousDucts(VentAreaByGerr.inches(in.get(power))), AREAS));
    }

    private static Calculation blower() {
        return Calculation.named("blower-33cfr183", "Blower of a gasoline compartment").explained("Rated capacity and measured output, at least.")
            .takes(NET).by("rated: 50 below 34 ft3, 1.5 V to 100 ft3, V/2 + 100 above; output 40 % of it (ft3/min)").validFor(GASOLINE_BOATS)
            .from(Source.quoted("33 CFR Table 183.610"))
            .answers(in -> Answer.of("rated capacity", Ventilation33Cfr183.leastRatedCapacity(in.get(NET)), "ft3/min", "m3/h")
                .and("output", Ventilation33Cfr183.leastOutput(in.get(NET)), "ft3/min", "m3/h"));
    }

    private static Calculation pickUp() {
        Parameter<Length> height = Parameter.of("compartment-height", Length.class, "height of the compartment");
        return Calculation.named("blower-pick-up-33cfr183", "Highest place of a blower's pick-up")
            .explained("How high above the bottom the intake duct may end; it has to stay above normal bilge water.").takes(height)
            .by("a third of the height").validFor("height more than 0").from(Source.retrieved("33 CFR 183.610(d)"))
            .answers(in -> Answer.of("highest place", Ventilation33Cfr183.highestPickUp(in.get(height))));
    }

    private static Calculation naturalVentilation() {
        return Calculation.named("natural-ventilation-33cfr183", "Natural ventilation of a gasoline compartment")
            .explained("The area of supply openings, and again of exhaust openings.").takes(NET).by("A = 5 ln(V/5) in2, V in ft3; each over 3 in2")
            .validFor(GASOLINE_BOATS).from(Source.retrieved("33 CFR 183.630"))
            .answers(in -> {
                Area area = Ventilation33Cfr183.leastNaturalArea(in.get(NET));
                return Answer.of("area each way", area, "in2", "cm2")
                    .and("each opening larger than", Ventilation33Cfr183.EACH_OPENING_OVER, "in2", "cm2")
                    .and("end fitting of a flexible duct", Ventilation33Cfr183.leastEndFitting(area), "in2", "cm2");
            });
    }

    private static Calculation openToAtmosphere() {
        return Calculation.named("open-compartment-33cfr183", "Open to the atmosphere")
            .explained("The open area from which on a gasoline compartment needs no ventilation.").takes(NET).by("15 in2 for each ft3")
            .validFor(GASOLINE_BOATS).from(Source.retrieved("33 CFR 183.605; ISO 11105:2020"))
            .answers(in -> Answer.of("open area", Ventilation33Cfr183.openToAtmosphere(in.get(NET)), "m2", "in2"));
    }

    private static Calculation joined() {
        Parameter<Area> whole = Parameter.of("whole-area", Area.class, "area between the two compartments");
        Parameter<Area> opening = Parameter.of("opening", Area.class, "opening in it");
        return Calculation.named("joined-compartments-33cfr183", "Whether compartments count as one")
            .explained("Whether the opening between two compartments joins their volumes.").takes(whole, opening).by("opening > 2 % of the area")
            .validFor("area more than 0").from(Source.retrieved("33 CFR 183.630"))
            .answers(in -> Answer.of("joined",
                Ventilation33Cfr183.joined(Ventilation33Cfr183.Partition.of(in.get(whole)).open(in.get(opening))) ? "yes" : "no"));
    }

    private static Calculation airChange() {
        return Calculation.named("air-change-46cfr182", "Exhaust ventilation of a small passenger vessel")
            .explained("Time for a change of air and flow, in a space with gasoline machinery or tanks.").takes(SPACE, FIGURES)
            .by("a change in 2, 3, 4 or 5 min to 500, 1000, 1500 ft3 (14, 28.50, 43 m3) and above").validFor("volume more than 0")
            .from(Source.retrieved("46 CFR 182.460(b)"))
            .answers(in -> Answer.of("time for a change", Ventilation46Cfr182.timePerAirChange(in.get(SPACE), in.get(FIGURES)), "min")
                .and("flow", Ventilation46Cfr182.leastFlow(in.get(SPACE), in.get(FIGURES)), "ft3/min", "m3/min"));
    }

    private static Calculation exhaustDuct() {
        return Calculation.named("exhaust-duct-46cfr182", "Area of an exhaust duct").explained("The free area that keeps to the rule's velocity.")
            .takes(FLOW, FIGURES).by("2000 ft/min, or 10 m/s").validFor("flow 0 or more").from(Source.fromMemory("46 CFR 182.460(f)"))
            .answers(in -> Answer.of("free area", Ventilation46Cfr182.leastDuctArea(in.get(FLOW), in.get(FIGURES)), AREAS));
    }

    private static Calculation blowTime() {
        return Calculation.named("blower-time", "Time to blow before a start").explained("One change of air, and the four minutes of the label.")
            .takes(SPACE, FLOW).by("t = V / Q").validFor("flow more than 0").from(Source.retrieved("46 CFR 185.352; 33 CFR 183.610(f)"))
            .answers(in -> {
                TimeSpan change = Ventilation46Cfr182.blowBeforeStart(in.get(SPACE), in.get(FLOW));
                return Answer.of("one change of air", change, "min").and("by the label", Ventilation33Cfr183.BLOW_BEFORE_START, "min");
            });
    }

    private static Calculation dieselDucts() {
        return Calculation.named("diesel-ducts-46cfr182", "Ducts of a diesel machinery space").explained("The area in, and again out.")
            .takes(BEAM, FIGURES).by("1 in2 for each ft, or 650 mm2 for each 300 mm of beam").validFor("beam more than 0")
            .from(Source.fromMemory("46 CFR 182.465").noting("the area the engine breathes through comes on top"))
            .answers(in -> {
                Area duct = Ventilation46Cfr182.leastDieselDuctArea(in.get(BEAM), in.get(FIGURES));
                return Answer.of("area each way", duct, AREAS).and("cowl on it", Ventilation46Cfr182.leastCowl(duct), AREAS);
            });
    }

    private static Calculation tankSpaceVent() {
        return Calculation.named("tank-space-vent-46cfr182", "Vent of a diesel tank space").explained("Bore of the gooseneck vent.")
            .takes(SPACE).by("65 mm from 14 m3 on, else 40 mm").validFor("space without machinery").from(Source.retrieved("46 CFR 182.470"))
            .answers(in -> Answer.of("bore", Ventilation46Cfr182.tankSpaceVent(in.get(SPACE)), "mm", "in"));
    }
}
