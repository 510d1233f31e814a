// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rawwater;

import java.util.List;
import java.util.Locale;

import garboard.physics.Source;
import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Inputs;
import garboard.physics.calculation.Parameter;
import garboard.physics.geometry.AttitudeEnvelope;
import garboard.physics.geometry.BoatPoint;
import garboard.physics.geometry.HeeledHeight;
import garboard.physics.pipe.DarcyWeisbach;
import garboard.physics.pipe.PipeRun;
import garboard.physics.pipe.SeaWater;
import garboard.physics.pipe.Wall;
import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.quantity.MassFlow;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Speed;
import garboard.quantity.Temperature;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/** Raw water as named calculations. */
public final class RawWaterCalculations {

    private static final Parameter<Power> HEAT = Parameter.of("heat", Power.class, "heat from the heat exchanger");
    private static final Parameter<TemperatureDifference> RISE =
        Parameter.of("rise", TemperatureDifference.class, "rise through the heat exchanger, usually 8 to 15 K").orElse("12 K");
    private static final Parameter<Temperature> SEA = Parameter.of("sea-temperature", Temperature.class, "0 to 40 degC").orElse("25 degC");
    private static final Parameter<VolumeFlow> FLOW = Parameter.of("flow", VolumeFlow.class, "raw-water flow");
    private static final Parameter<MassFlow> GAS = Parameter.of("gas-flow", MassFlow.class, "exhaust gas, as a mass flow").orElse("0 kg/s");
    private static final Parameter<Temperature> HOT = Parameter.of("gas-temperature", Temperature.class, "before injection").orElse("450 degC");
    private static final Parameter<Temperature> MIXED = Parameter.of("mixed-temperature", Temperature.class, "after injection").orElse("60 degC");
    private static final Parameter<Power> SHAFT = Parameter.of("shaft-power", Power.class, "power at the engine's shaft");
    private static final Parameter<Length> BORE = Parameter.of("bore", Length.class, "bore");
    private static final Parameter<Length> HOSE = Parameter.of("length", Length.class, "length of the suction line");
    private static final Parameter<Wall> WALL = Parameter.choice("wall", Wall.class, "kind of wall").orElse("rubber-hose-smooth");
    private static final Parameter<Ratio> FITTINGS =
        Parameter.of("loss-coefficient", Ratio.class, "sum of the loss coefficients K of grating, valve, strainer and bends").orElse("6");
    private static final Parameter<Length> PUMP = Parameter.of("pump-height", Length.class, "pump above the waterline, below negative").orElse("0 m");
    private static final Parameter<Speed> SPEED = Parameter.of("speed", Speed.class, "speed through the water");
    private static final Parameter<Length> HEAD = Parameter.of("head", Length.class, "height to reach, such as that of a loop");

    private static final Source HEAT_BALANCE = Source.derived("conservation of energy; sea water after Sharqawy et al. 2010");
    private static final String[] HEADS = {"m", "ft"};
    private static final String[] VACUUM = {"kPa", "inHg"};

    private RawWaterCalculations() {
    }

    public static List<Calculation> all() {
        return List.of(flowForHeat(), heatTaken(), overboard(), leastFlow(), flowForPower(), suction(), leastSuctionBore(), ram(),
            ramSpeed(), ramSpeedForPressure(), flooding(), floodingTime(), grating(), basket(), seacockZone(), siphonBreak());
    }

    private static Calculation flowForHeat() {
        return Calculation.named("raw-water-flow", "Raw-water flow for a heat").explained("The flow that takes a heat away with a rise.")
            .takes(HEAT, RISE, SEA).by("Q = heat / (rho cp rise)").validFor("sea water of 0 to 40 degC").from(HEAT_BALANCE)
            .answers(in -> Answer.of("flow", CoolingWater.sea(in.get(SEA)).flow(in.get(HEAT), in.get(RISE))));
    }

    private static Calculation heatTaken() {
        return Calculation.named("raw-water-heat", "Heat that the raw water takes").explained("What a measured flow and rise say of the heat.")
            .takes(FLOW, RISE, SEA).by("heat = rho Q cp rise").validFor("sea water of 0 to 40 degC").from(HEAT_BALANCE)
            .answers(in -> Answer.of("heat", CoolingWater.sea(in.get(SEA)).heat(in.get(FLOW), in.get(RISE))));
    }

    private static Calculation overboard() {
        return Calculation.named("overboard-temperature", "Temperature overboard")
            .explained("How warm the water leaves with the heat of coolant and exhaust.").takes(HEAT, FLOW, SEA, GAS, HOT, MIXED)
            .by("T = T_sea + (heat + m_gas 1.10 kJ/(kg.K) (T_gas - T_mixed)) / (rho Q cp)").validFor("sea water of 0 to 40 degC; no evaporation")
            .from(HEAT_BALANCE)
            .answers(in -> {
                HeatOverboard heat = heat(in);
                Temperature overboard = heat.temperature(in.get(FLOW));
                return Answer.of("temperature overboard", overboard).and("rise in the elbow", heat.elbowRise(in.get(FLOW)))
                    .and("heat of the gas", heat.exhaust())
                    .warningIf(overboard.in("degC") > 60, "More than 60 degC: investigate (common practice).");
            });
    }

    private static Calculation leastFlow() {
        Parameter<Temperature> limit = Parameter.of("limit", Temperature.class, "warmest the water may leave").orElse("60 degC");
        return Calculation.named("overboard-least-flow", "Least flow for a temperature overboard")
            .explained("The flow that keeps the water overboard to a temperature.").takes(HEAT, limit, SEA, GAS, HOT, MIXED)
            .by("Q = (heat + heat of the gas) / (rho cp (limit - T_sea))").validFor("limit more than the sea temperature").from(HEAT_BALANCE)
            .answers(in -> Answer.of("least flow", heat(in).leastFlow(in.get(limit))));
    }

    private static Calculation flowForPower() {
        Parameter<FlowPerPower> cooling = Parameter.choice("cooling", FlowPerPower.class, "kind of cooling").orElse("heat-exchanger");
        return Calculation.named("raw-water-flow-for-power", "Usual raw-water flow for a power").explained("The trade's rule by shaft power.")
            .takes(SHAFT, cooling).by("65 to 70 L/min for 100 bhp, direct cooling 36 to 39").validFor("power more than 0")
            .from(Source.quoted("chandler's guide"))
            .answers(in -> Answer.of("least", in.get(cooling).least(in.get(SHAFT))).and("greatest", in.get(cooling).greatest(in.get(SHAFT))));
    }

    private static Calculation suction() {
        return Calculation.named("suction-head", "Suction at the raw-water pump").explained("Head and vacuum at the pump: lift and losses.")
            .takes(FLOW, BORE, HOSE, WALL, FITTINGS, PUMP, SEA).by("head = (f L/D + K) v^2/(2 g) + pump height").validFor("sea water of 0 to 40 degC")
            .from(Source.retrieved("White, Fluid Mechanics, ch. 6; 4 ft: Gerr, Boat Mechanical Systems Handbook, ch. 19")
                .noting("10 and 20 kPa are common practice"))
            .answers(in -> {
                Suction suction = new Suction(DarcyWeisbach.loss(line(in, in.get(BORE)), in.get(FLOW), SeaWater.at(in.get(SEA))), in.get(PUMP));
                return Answer.of("suction head", suction.head(), HEADS).and("vacuum at the pump", suction.vacuum(), VACUUM)
                    .and("head lost", suction.loss().head(), HEADS).and("velocity", suction.loss().velocity())
                    .and("highest place of the pump", suction.greatestLift(Suction.GREATEST_HEAD_BY_GERR), HEADS)
                    .warningIf(suction.head().isMoreThan(Suction.GREATEST_HEAD_BY_GERR), "More than 4 ft of suction head.")
                    .warningIf(suction.vacuum().in("kPa") > 20, "More than 20 kPa of vacuum.");
            });
    }

    private static Calculation leastSuctionBore() {
        Parameter<PressureDifference> most = Parameter.of("vacuum", PressureDifference.class, "greatest vacuum at the pump").orElse("10 kPa");
        return Calculation.named("suction-least-bore", "Least bore of the suction line").explained("The bore that keeps to a vacuum at the pump.")
            .takes(FLOW, most, HOSE, WALL, FITTINGS, PUMP, SEA).by("(f L/D + K) rho v^2/2 + rho g x pump height = vacuum, solved for the bore")
            .validFor("bores from 1 mm to 2 m; the lift alone has to leave something").from(Source.retrieved("White, Fluid Mechanics, ch. 6"))
            .answers(in -> {
                var sea = SeaWater.at(in.get(SEA));
                Suction suction = new Suction(DarcyWeisbach.loss(line(in, Length.of(1)), in.get(FLOW), sea), in.get(PUMP));
                return Answer.of("bore", DarcyWeisbach.leastBore(line(in, Length.of(1)), in.get(FLOW), suction.greatestLoss(in.get(most)), sea));
            });
    }

    private static Calculation ram() {
        return Calculation.named("ram-head", "Ram of a forward scoop").explained("How high a scoop lifts water under way.").takes(SPEED)
            .by("h = V^2 / (2 g)").validFor("all of the ram, without losses").from(Source.derived("stagnation pressure"))
            .answers(in -> Answer.of("head", RamHead.at(in.get(SPEED)), HEADS)
                .and("pressure", RamHead.pressureAt(in.get(SPEED), SeaWater.CUSTOMARY_DENSITY), "kPa", "psi"));
    }

    private static Calculation ramSpeed() {
        return Calculation.named("ram-speed", "Speed for a ram head").explained("The speed at which a scoop lifts water over a height.").takes(HEAD)
            .by("V = sqrt(2 g h)").validFor("all of the ram, without losses").from(Source.derived("stagnation pressure"))
            .answers(in -> Answer.of("speed", RamHead.speedFor(in.get(HEAD)), "kn", "m/s"));
    }

    private static Calculation ramSpeedForPressure() {
        Parameter<PressureDifference> pressure = Parameter.of("pressure", PressureDifference.class, "greatest pressure at the pump's inlet");
        return Calculation.named("ram-speed-for-pressure", "Speed for a ram pressure")
            .explained("The speed at which a scoop reaches a pump's greatest inlet pressure.").takes(pressure)
            .by("V = sqrt(2 p / rho), rho = 1025 kg/m3").validFor("all of the ram, without losses").from(Source.derived("stagnation pressure"))
            .answers(in -> Answer.of("speed", RamHead.speedFor(in.get(pressure), SeaWater.CUSTOMARY_DENSITY), "kn", "m/s"));
    }

    private static Calculation flooding() {
        Parameter<Length> depth = Parameter.of("depth", Length.class, "depth of the hole under water");
        Parameter<Ratio> discharge =
            Parameter.of("discharge-coefficient", Ratio.class, "1 as in print, 0.61 sharp-edged, 0.80 short tube").orElse("0.80");
        return Calculation.named("flooding-flow", "Flooding through a hole").explained("What a broken hose or open seacock lets in.")
            .takes(BORE, depth, discharge).by("Q = Cd A sqrt(2 g h)").validFor("as long as the inside is not flooded")
            .from(Source.retrieved("Torricelli; coefficients: White, Fluid Mechanics, ch. 6").noting("flooding rates in print use Cd = 1"))
            .answers(in -> Answer.of("flow", Flooding.flow(Flooding.Hole.ofBore(in.get(BORE)).under(in.get(depth)), in.get(discharge))));
    }

    private static Calculation floodingTime() {
        Parameter<Volume> volume = Parameter.of("volume", Volume.class, "what may come in");
        return Calculation.named("flooding-time", "Time to take in a volume").explained("How long a flow takes to bring a volume in.")
            .takes(volume, FLOW).by("t = V / Q").validFor("flow more than 0").from(Source.derived("volumes"))
            .answers(in -> Answer.of("time", Flooding.timeFor(in.get(volume), in.get(FLOW)), "min"));
    }

    private static Calculation grating() {
        return Calculation.named("grating-area", "Open area of a hull grating").explained("The open area a grating needs before a valve.")
            .takes(BORE).by("A = 2 pi D^2 / 4").validFor("bore more than 0").from(Source.quoted("summary of a classification rule"))
            .answers(in -> Answer.of("open area", OpenArea.leastGrating(in.get(BORE)), "mm2", "in2"));
    }

    private static Calculation basket() {
        return Calculation.named("strainer-basket-area", "Open area of a strainer basket").explained("The open area a basket needs for a hose.")
            .takes(BORE).by("A = 3 pi D^2 / 4").validFor("bore more than 0").from(Source.commonPractice())
            .answers(in -> Answer.of("open area", OpenArea.leastBasket(in.get(BORE)), "mm2", "in2"));
    }

    private static Calculation seacockZone() {
        Parameter<Length> waterline = Parameter.of("waterline-length", Length.class, "length of the loaded waterline");
        return Calculation.named("seacock-zone", "Height below which openings get a seacock")
            .explained("The height above the loaded waterline up to which every opening gets a valve.").takes(waterline)
            .by("the larger of 0.30 m and LWL / 60").validFor("length more than 0")
            .from(Source.retrieved("Gerr, Boat Mechanical Systems Handbook, ch. 17")
                .noting("ISO 9093 asks for a valve below the heeled waterline, 46 CFR 179.350 below 150 mm above the deepest load waterline"))
            .answers(in -> Answer.of("height", SeacockZone.heightByGerr(in.get(waterline))));
    }

    private static Calculation siphonBreak() {
        Parameter<Length> height = Parameter.of("height", Length.class, "injection point above the loaded waterline");
        Parameter<Length> starboard = Parameter.of("starboard", Length.class, "off the centreline").orElse("0 m");
        Parameter<Length> forward = Parameter.of("forward", Length.class, "forward of the centre of flotation").orElse("0 m");
        Parameter<Angle> heel = Parameter.of("heel", Angle.class, "greatest heel, either side");
        Parameter<Angle> trim = Parameter.of("trim", Angle.class, "greatest trim, either way").orElse("0 deg");
        return Calculation.named("siphon-break-needed", "Whether a siphon break is needed")
            .explained("Whether the injection point comes so near the water that the raw-water line needs a break.")
            .takes(forward, starboard, height, heel, trim)
            .by("needed below 0.15 m inclined or 0.23 m at rest; advised below 0.30 m at rest").validFor("heel and trim less than 90 deg")
            .from(Source.commonPractice().noting("150, 200, 230 and 300 mm are in use"))
            .answers(in -> {
                BoatPoint point = BoatPoint.atHeight(in.get(height)).withForward(in.get(forward)).withStarboard(in.get(starboard));
                Length lowest = HeeledHeight.lowest(point, AttitudeEnvelope.toHeel(in.get(heel)).toTrim(in.get(trim))).height();
                var need = SiphonBreakNeed.of(SiphonBreakNeed.Heights.upright(in.get(height)).lowest(lowest));
                return Answer.of("siphon break", need.name().toLowerCase(Locale.ROOT).replace('_', ' ')).and("lowest height", lowest);
            });
    }

    private static HeatOverboard heat(Inputs in) {
        return HeatOverboard.ofCoolant(in.get(HEAT), in.get(SEA)).withExhaust(GasCooling.from(in.get(GAS), in.get(HOT)).to(in.get(MIXED)));
    }

    private static PipeRun line(Inputs in, Length bore) {
        return PipeRun.ofBore(bore).withLength(in.get(HOSE)).withRoughness(in.get(WALL)).plusLoss(in.get(FITTINGS));
    }
}
