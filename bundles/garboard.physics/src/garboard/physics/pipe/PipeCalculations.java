// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import garboard.physics.Source;
import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Inputs;
import garboard.physics.calculation.Parameter;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Speed;
import garboard.quantity.Temperature;
import garboard.quantity.VolumeFlow;

/** Flow in pipes as named calculations. */
public final class PipeCalculations {

    private static final Parameter<Length> BORE = Parameter.of("bore", Length.class, "inside diameter");
    private static final Parameter<Length> LENGTH = Parameter.of("length", Length.class, "length of the run");
    private static final Parameter<VolumeFlow> FLOW = Parameter.of("flow", VolumeFlow.class, "volume flow");
    private static final Parameter<Speed> VELOCITY = Parameter.of("velocity", Speed.class, "mean velocity");
    private static final Parameter<Wall> WALL = Parameter.choice("wall", Wall.class, "kind of wall").orElse("rubber-hose-smooth");
    private static final Parameter<Optional<Length>> ROUGHNESS =
        Parameter.of("roughness", Length.class, "roughness of the wall, in place of that of its kind").optional();
    private static final Parameter<Ratio> MINOR_LOSS =
        Parameter.of("loss-coefficient", Ratio.class, "sum of the loss coefficients K of all fittings").orElse("0");
    private static final Parameter<Medium> MEDIUM = Parameter.choice("fluid", Medium.class, "what flows").orElse("sea-water");
    private static final Parameter<Temperature> TEMPERATURE = Parameter.of("temperature", Temperature.class, "of the fluid").orElse("15 degC");
    private static final Parameter<PressureDifference> LOSS = Parameter.of("pressure-loss", PressureDifference.class, "pressure loss");
    private static final Parameter<Ratio> REYNOLDS = Parameter.of("reynolds-number", Ratio.class, "Reynolds number");
    private static final Parameter<Ratio> RELATIVE_ROUGHNESS =
        Parameter.of("relative-roughness", Ratio.class, "roughness of the wall over bore, 0 to 0.05");

    private static final Source CONTINUITY = Source.derived("continuity in a round bore");
    private static final Source WHITE = Source.retrieved("White, Fluid Mechanics, ch. 6 (Darcy and Weisbach, Colebrook, minor losses)");
    private static final String DARCY = "dp = (f L/D + K) rho v^2 / 2; f = 64/Re below Re 2300, Colebrook from there on";
    private static final String DARCY_RANGE =
        "Re to 1e8, roughness to 5 % of the bore; between Re 2300 and 4000 the turbulent factor, the larger one, is taken";
    private static final String[] HEADS = {"m", "ft"};

    private PipeCalculations() {
    }

    public static List<Calculation> all() {
        return List.of(velocity(), boreForVelocity(), flowForVelocity(), content(), reynolds(), friction(), swameeJain(), loss(), flowForLoss(),
            leastBore(), longestRun(), fitting(), equivalentLength(), changeOfBore(), hoseSize(), properties(), column());
    }

    private static Calculation velocity() {
        return Calculation.named("pipe-velocity", "Velocity in a bore").explained("How fast a flow runs in a bore.").takes(FLOW, BORE)
            .by("v = 4 Q / (pi D^2)").validFor("bore more than 0").from(CONTINUITY)
            .answers(in -> Answer.of("velocity", Bore.velocity(in.get(FLOW), in.get(BORE))).and("area", Bore.area(in.get(BORE))));
    }

    private static Calculation boreForVelocity() {
        return Calculation.named("pipe-bore-for-velocity", "Least bore for a velocity")
            .explained("The bore that keeps a flow to a velocity, and the hose size that has it.").takes(FLOW, VELOCITY)
            .by("D = sqrt(4 Q / (pi v))").validFor("flow and velocity more than 0").from(CONTINUITY)
            .answers(in -> sized(Bore.forVelocity(in.get(FLOW), in.get(VELOCITY))));
    }

    private static Calculation flowForVelocity() {
        return Calculation.named("pipe-flow-for-velocity", "Flow at a velocity").explained("The flow that a bore passes at a velocity.")
            .takes(BORE, VELOCITY).by("Q = v pi D^2 / 4").validFor("bore more than 0").from(CONTINUITY)
            .answers(in -> Answer.of("flow", Bore.flow(in.get(VELOCITY), in.get(BORE))));
    }

    private static Calculation content() {
        return Calculation.named("pipe-content", "Content of a run").explained("What a length of hose or pipe holds when full.")
            .takes(BORE, LENGTH).by("V = pi D^2 L / 4").validFor("bore more than 0").from(Source.derived("volume of a cylinder"))
            .answers(in -> Answer.of("content", Bore.content(PipeRun.ofBore(in.get(BORE)).withLength(in.get(LENGTH)))));
    }

    private static Calculation reynolds() {
        return Calculation.named("reynolds-number", "Reynolds number").explained("Whether a flow is laminar or turbulent.")
            .takes(VELOCITY, BORE, MEDIUM, TEMPERATURE).by("Re = v D / nu").validFor("temperatures at which the fluid's properties are known")
            .from(WHITE)
            .answers(in -> {
                Ratio number = Reynolds.number(in.get(VELOCITY), in.get(BORE), fluid(in).viscosity());
                return Answer.of("Reynolds number", number, "1").and("regime", word(Reynolds.regime(number)));
            });
    }

    private static Calculation friction() {
        return Calculation.named("friction-factor", "Friction factor").explained("Darcy's friction factor, laminar or by Colebrook.")
            .takes(REYNOLDS, RELATIVE_ROUGHNESS).by("64/Re, or 1/sqrt(f) = -2 log10(e/3.7 + 2.51/(Re sqrt(f)))").validFor(DARCY_RANGE).from(WHITE)
            .answers(in -> Answer.of("friction factor", FrictionFactor.of(in.get(REYNOLDS), in.get(RELATIVE_ROUGHNESS)), "1")
                .and("regime", word(Reynolds.regime(in.get(REYNOLDS)))));
    }

    private static Calculation swameeJain() {
        return Calculation.named("friction-factor-explicit", "Friction factor by Swamee and Jain")
            .explained("The explicit formula, for reckoning by hand.").takes(REYNOLDS, RELATIVE_ROUGHNESS)
            .by("f = 0.25 / log10(e/3.7 + 5.74/Re^0.9)^2").validFor("Re 5000 to 1e8, relative roughness to 0.01")
            .from(Source.fromMemory("Swamee and Jain, 1976"))
            .answers(in -> Answer.of("friction factor", FrictionFactor.swameeJain(in.get(REYNOLDS), in.get(RELATIVE_ROUGHNESS)), "1"));
    }

    private static Calculation loss() {
        return Calculation.named("pipe-loss", "Pressure loss in a run").explained("What a flow loses in a run of hose or pipe with its fittings.")
            .takes(FLOW, BORE, LENGTH, WALL, ROUGHNESS, MINOR_LOSS, MEDIUM, TEMPERATURE).by(DARCY).validFor(DARCY_RANGE).from(WHITE)
            .answers(in -> answer(DarcyWeisbach.loss(run(in, in.get(BORE)), in.get(FLOW), fluid(in))));
    }

    private static Calculation flowForLoss() {
        return Calculation.named("pipe-flow-for-loss", "Flow for a pressure loss").explained("The flow that a pressure drives through a run.")
            .takes(LOSS, BORE, LENGTH, WALL, ROUGHNESS, MINOR_LOSS, MEDIUM, TEMPERATURE).by(DARCY + "; solved for the flow")
            .validFor(DARCY_RANGE).from(WHITE)
            .answers(in -> {
                VolumeFlow flow = DarcyWeisbach.flowFor(run(in, in.get(BORE)), in.get(LOSS), fluid(in));
                return Answer.of("flow", flow).and("velocity", Bore.velocity(flow, in.get(BORE)));
            });
    }

    private static Calculation leastBore() {
        return Calculation.named("pipe-least-bore", "Least bore for a pressure loss")
            .explained("The bore that keeps a flow to a pressure loss, and the hose size that has it.")
            .takes(FLOW, LOSS, LENGTH, WALL, ROUGHNESS, MINOR_LOSS, MEDIUM, TEMPERATURE).by(DARCY + "; solved for the bore")
            .validFor("bores from 1 mm or 20 times the roughness to 2 m").from(WHITE)
            .answers(in -> sized(DarcyWeisbach.leastBore(run(in, Length.of(1)), in.get(FLOW), in.get(LOSS), fluid(in))));
    }

    private static Calculation longestRun() {
        return Calculation.named("pipe-longest-run", "Longest run for a pressure loss")
            .explained("How long a run may be before a flow loses more than a pressure in it.")
            .takes(FLOW, LOSS, BORE, WALL, ROUGHNESS, MINOR_LOSS, MEDIUM, TEMPERATURE).by(DARCY + "; solved for the length")
            .validFor(DARCY_RANGE).from(WHITE)
            .answers(in -> {
                PipeRun run = PipeRun.ofBore(in.get(BORE)).withRoughness(roughness(in)).plusLoss(in.get(MINOR_LOSS));
                Length longest = DarcyWeisbach.greatestLength(run, in.get(FLOW), in.get(LOSS), fluid(in));
                return Answer.of("longest run", longest, HEADS).warningIf(longest.si() == 0, "The fittings alone lose more than that.");
            });
    }

    private static Calculation fitting() {
        Parameter<Fitting> fitting = Parameter.choice("fitting", Fitting.class, "kind of fitting");
        return Calculation.named("fitting-loss", "Loss coefficient of a fitting")
            .explained("K of a fitting, typical and as far as printed figures go.").takes(fitting).by("h = K v^2 / (2 g)").validFor("turbulent flow")
            .from(Source.retrieved("open engineering tables citing Crane TP-410 and standard texts")
                .noting("strainer and grating are common practice, the hose barb is derived"))
            .answers(in -> Answer.of("typical K", in.get(fitting).loss(), "1").and("least K", in.get(fitting).leastLoss(), "1")
                .and("greatest K", in.get(fitting).greatestLoss(), "1").and("status", in.get(fitting).status().label()));
    }

    private static Calculation equivalentLength() {
        Parameter<EquivalentLength> bend = Parameter.choice("bend", EquivalentLength.class, "kind of bend or tee");
        return Calculation.named("equivalent-length", "Equivalent length of a bend").explained("The straight length that loses as much as a bend.")
            .takes(bend, BORE).by("Le = n D").validFor("bore more than 0")
            .from(Source.quoted("exhaust bends: trade figures; water fittings: Gerr, Boat Mechanical Systems Handbook, Table 19-2"))
            .answers(in -> Answer.of("equivalent length", in.get(bend).length(in.get(BORE)), HEADS).and("in bores", in.get(bend).inBores(), "1"));
    }

    private static Calculation changeOfBore() {
        Parameter<Length> narrow = Parameter.of("narrow-bore", Length.class, "the narrow bore");
        Parameter<Length> wide = Parameter.of("wide-bore", Length.class, "the wide bore");
        return Calculation.named("change-of-bore", "Loss at a sudden change of bore")
            .explained("K of a step in the bore, both ways, over the velocity in the narrow bore.").takes(narrow, wide)
            .by("expansion (1 - (d/D)^2)^2, contraction 0.5 (1 - (d/D)^2)").validFor("turbulent flow")
            .from(Source.retrieved("standard texts (Borda and Carnot)"))
            .answers(in -> {
                var step = new ChangeOfBore.Step(in.get(narrow), in.get(wide));
                return Answer.of("K of the expansion", ChangeOfBore.expansion(step), "1")
                    .and("K of the contraction", ChangeOfBore.contraction(step), "1");
            });
    }

    private static Calculation hoseSize() {
        return Calculation.named("hose-size", "Hose size for a bore").explained("The smallest hose size with at least a bore, and the next one up.")
            .takes(BORE).by("inch sizes of marine hose").validFor("bores to 127 mm").from(Source.commonPractice())
            .answers(in -> sized(in.get(BORE)).and("next size above", HoseSize.above(in.get(BORE)).map(HoseSize::name).orElse("none")));
    }

    private static Calculation properties() {
        return Calculation.named("fluid-properties", "Properties of a fluid").explained("Density, viscosity and specific heat at a temperature.")
            .takes(MEDIUM, TEMPERATURE).by("tables with straight lines in between; sea water and gas by formula")
            .validFor("sea water and fuels 0 to 40 degC, fresh water 0 to 100 degC, air -20 to 60 degC, exhaust gas 20 to 800 degC")
            .from(Source.quoted("Sharqawy et al. 2010 (sea water); MWH's Water Treatment, Table C-1 (fresh water)")
                .noting("fuels and air are typical figures from memory"))
            .answers(in -> Answer.of("density", fluid(in).density()).and("kinematic viscosity", fluid(in).viscosity(), "mm2/s", "cSt")
                .and("specific heat", in.get(MEDIUM).specificHeat(in.get(TEMPERATURE))));
    }

    private static Calculation column() {
        Parameter<Length> height = Parameter.of("height", Length.class, "height of the column");
        return Calculation.named("liquid-column", "Pressure of a column of liquid").explained("The pressure that a height of liquid makes.")
            .takes(height, MEDIUM, TEMPERATURE).by("p = rho g h, g = 9.80665 m/s2").validFor("temperatures at which the density is known")
            .from(Source.derived("hydrostatics"))
            .answers(in -> Answer.of("pressure", Hydrostatics.pressure(fluid(in).density(), in.get(height)), "kPa", "inHg", "psi"));
    }

    private static Answer answer(PipeLoss loss) {
        return Answer.of("pressure loss", loss.total(), "kPa", "psi").and("head", loss.head(), HEADS).and("friction", loss.friction(), "kPa", "psi")
            .and("fittings", loss.minor(), "kPa", "psi").and("velocity", loss.velocity()).and("Reynolds number", loss.reynolds(), "1")
            .and("friction factor", loss.frictionFactor(), "1").and("regime", word(loss.regime()))
            .warningIf(loss.regime() == Reynolds.Regime.TRANSITIONAL, "Between laminar and turbulent: the flow may lose less than this.");
    }

    private static Answer sized(Length bore) {
        return Answer.of("bore", bore).and("hose size", HoseSize.atLeast(bore).map(HoseSize::name).orElse("none"))
            .warningIf(HoseSize.atLeast(bore).isEmpty(), "Larger than the largest hose size in the table.");
    }

    private static PipeRun run(Inputs in, Length bore) {
        return PipeRun.ofBore(bore).withLength(in.get(LENGTH)).withRoughness(roughness(in)).plusLoss(in.get(MINOR_LOSS));
    }

    private static Length roughness(Inputs in) {
        return in.get(ROUGHNESS).orElseGet(() -> in.get(WALL).roughness());
    }

    private static Fluid fluid(Inputs in) {
        return in.get(MEDIUM).at(in.get(TEMPERATURE));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
