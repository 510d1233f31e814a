// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.List;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Parameter;
import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/** The calculations of power, plate and load list. */
final class PowerCalculations {

    private static final Parameter<Voltage> LINE = Parameter.of("voltage", Voltage.class, "voltage between lines");
    private static final Parameter<PhaseSystem> PHASES = Parameter.choice("phases", PhaseSystem.class, "how it is wired").orElse("single-phase");

    private PowerCalculations() {
    }

    static List<Calculation> all() {
        return List.of(currentOf(), powerOf(), generatorDevice(), loadDemand(), leastRating(), galley(), panel(), charger(), inrush());
    }

    private static Calculation currentOf() {
        Parameter<ApparentPower> apparent = Parameter.of("apparent-power", ApparentPower.class, "apparent power");
        return Calculation.named("ac-current", "Current of an apparent power").explained("The line current of a set or load.")
                .takes(apparent, LINE, PHASES)
                .by("S / U; three-phase S / (sqrt(3) U)").validFor("balanced load").from(AcSources.BASIC)
                .answers(in -> Answer.of("current", AcPower.current(in.get(apparent), in.get(LINE), in.get(PHASES)), "A"));
    }

    private static Calculation powerOf() {
        Parameter<Current> current = Parameter.of("current", Current.class, "line current");
        Parameter<Ratio> factor = Parameter.of("power-factor", Ratio.class, "power factor, lagging").orElse("1");
        return Calculation.named("ac-power", "Power of a current")
                .explained("Apparent, active and reactive power from volts, amperes and power factor.")
                .takes(LINE, current, factor, PHASES).by("S = U I (three-phase sqrt(3) U I); P = S pf; Q = P tan(acos pf)").validFor("balanced load")
                .from(AcSources.BASIC).answers(in -> {
                    ApparentPower apparent = AcPower.apparent(in.get(LINE), in.get(current), in.get(PHASES));
                    Power active = AcPower.active(apparent, in.get(factor));
                    return Answer.of("active power", active, "kW").and("apparent power", apparent, "kVA")
                            .and("reactive power", AcPower.reactive(active, in.get(factor)), "kvar");
                });
    }

    private static Calculation generatorDevice() {
        Parameter<Power> rated = Parameter.of("rated-power", Power.class, "rated active power");
        Parameter<Ratio> factor = Parameter.of("power-factor", Ratio.class, "rated power factor").orElse("0.8");
        Parameter<Ratio> derating = Parameter.of("derating", Ratio.class, "share of the power that is left").orElse("100 %");
        return Calculation.named("generator-device", "Full-load current, device and cable of a generator")
                .explained("Full-load amperes, the most for its overcurrent device, the least for its cable.")
                .takes(rated, LINE, factor, PHASES, derating)
                .by("I = P / (U pf), three-phase P / (sqrt(3) U pf); 115 % of it").validFor("the rule binds inspected vessels; practice elsewhere")
                .from(AcSources.GENERATOR_DEVICE).answers(in -> {
                    GeneratorPlate plate = new GeneratorPlate(in.get(rated), in.get(factor), in.get(LINE), in.get(PHASES)).derated(in.get(derating));
                    return Answer.of("full-load current", plate.fullLoad(), "A").and("device at most", plate.highestDevice(), "A")
                            .and("cable at least", plate.leastCable(), "A");
                });
    }

    private static Calculation loadDemand() {
        Parameter<Power> shaft = Parameter.of("power", Power.class, "power given, at the shaft of a motor");
        Parameter<Ratio> efficiency = Parameter.of("efficiency", Ratio.class, "share of the input that is given").orElse("100 %");
        Parameter<Ratio> factor = Parameter.of("power-factor", Ratio.class, "power factor, lagging").orElse("1");
        Parameter<Ratio> load = Parameter.of("load-factor", Ratio.class, "share of full power it runs at").orElse("1");
        Parameter<Ratio> diversity = Parameter.of("diversity-factor", Ratio.class, "share of such loads that run").orElse("1");
        Parameter<Ratio> time = Parameter.of("time-factor", Ratio.class, "share of the time it runs").orElse("1");
        return Calculation.named("load-demand", "Demand of one load").explained("One line of a load list: what it asks of the set in a condition.")
                .takes(shaft, efficiency, factor, load, diversity, time)
                .by("P = P given / efficiency x kl kd kt; Q = P tan(acos pf); S = sqrt(P^2 + Q^2)")
                .validFor("factors from 0 to 1").from(AcSources.DEMAND_SUM).answers(in -> {
                    ConnectedLoad connected = ConnectedLoad.of(ConnectedLoad.inputOf(in.get(shaft), in.get(efficiency)))
                            .withPowerFactor(in.get(factor))
                            .times(in.get(load)).times(in.get(diversity)).times(in.get(time));
                    return Answer.of("demand", connected.demand(), "kW").and("reactive demand", connected.reactiveDemand(), "kvar")
                            .and("apparent demand", AcPower.apparent(connected.demand(), connected.reactiveDemand()), "kVA")
                            .and("input at full power", connected.input(), "kW").and("use factor", connected.useFactor(), "1");
                });
    }

    private static Calculation leastRating() {
        Parameter<Power> demand = Parameter.of("demand", Power.class, "largest sustained demand");
        Parameter<Ratio> share = Parameter.of("highest-share", Ratio.class, "share of the rating it may take").orElse("80 %");
        return Calculation.named("set-rating", "Least rating for a demand").explained("The set that a sustained demand asks for.")
                .takes(demand, share)
                .by("demand / highest share").validFor("shares up to 100 %").from(AcSources.SIZING_WINDOW)
                .answers(in -> Answer.of("least rating", DemandSum.of(List.of(ConnectedLoad.of(in.get(demand)))).leastRating(in.get(share)), "kW"));
    }

    private static Calculation galley() {
        Parameter<Power> connected = Parameter.of("connected", Power.class, "sum of the appliances");
        Parameter<Power> spare = Parameter.of("spare-circuits", Power.class, "sum of the ratings of spare circuits").orElse("0 kW");
        return Calculation.named("galley-feeder", "Demand of a galley feeder").explained("What a galley counts for by 46 CFR.")
                .takes(connected, spare)
                .by("larger of first 50 kW and half + 65 % of the rest + 50 % of spare circuits")
                .validFor("the rule binds inspected ships; practice elsewhere")
                .from(AcSources.GALLEY_FEEDER)
                .answers(in -> Answer.of("demand", FeederDemand.galley(new FeederDemand.GalleyLoad(in.get(connected), in.get(spare))), "kW"));
    }

    private static Calculation panel() {
        Parameter<Current> longRunning = Parameter.of("long-running", Current.class, "sum of the loads that run for hours");
        Parameter<Current> largest = Parameter.of("largest-other", Current.class, "largest of the other loads");
        Parameter<Current> sum = Parameter.of("sum-of-others", Current.class, "sum of the other loads, the largest included");
        return Calculation.named("panel-feeder", "Feeder of a direct-current panel").explained("The current a panel's feeder is sized for.")
                .takes(longRunning, largest, sum).by("A + larger of the largest other and 10 % of all others")
                .validFor("direct-current panels of boats")
                .from(AcSources.PANEL_FEEDER).answers(in -> Answer.of("feeder current",
                        FeederDemand.panel(in.get(longRunning), new FeederDemand.OtherLoads(in.get(largest), in.get(sum))), "A"));
    }

    private static Calculation charger() {
        Parameter<Voltage> direct = Parameter.of("charging-voltage", Voltage.class, "voltage it charges at");
        Parameter<Current> current = Parameter.of("charging-current", Current.class, "current it gives");
        Parameter<Ratio> efficiency = Parameter.of("efficiency", Ratio.class, "share of the input that reaches the battery").orElse("88 %");
        Parameter<Ratio> factor = Parameter.of("power-factor", Ratio.class, "power factor of the input").orElse("0.7");
        return Calculation.named("charger-input", "Mains side of a battery charger").explained("What a charger asks of the set.")
                .takes(direct, current, efficiency, factor).by("U I / (efficiency x power factor)").validFor("chargers and converters at full output")
                .from(AcSources.CHARGER_INPUT).answers(in -> Answer.of("apparent power", ChargerInput.of(in.get(direct), in.get(current))
                        .withEfficiency(in.get(efficiency)).withPowerFactor(in.get(factor)).apparent(), "kVA"));
    }

    private static Calculation inrush() {
        Parameter<Inrush> kind = Parameter.choice("kind", Inrush.class, "what is switched on");
        Parameter<Current> rated = Parameter.of("rated-current", Current.class, "its rated current");
        return Calculation.named("inrush", "Inrush of a transformer or charger").explained("The usual range of the current when it is switched on.")
                .takes(kind, rated).by("multiple x rated current").validFor("first cycle, or less than 10 ms").from(AcSources.INRUSH)
                .answers(in -> Answer.of("most", in.get(kind).most(in.get(rated)), "A").and("least", in.get(kind).least(in.get(rated)), "A"));
    }
}
