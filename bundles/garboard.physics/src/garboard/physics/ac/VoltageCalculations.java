// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.List;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Parameter;
import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/** The calculations of voltage and balance. */
final class VoltageCalculations {

    private static final Parameter<Voltage> RATED = Parameter.of("rated", Voltage.class, "rated voltage");

    private VoltageCalculations() {
    }

    static List<Calculation> all() {
        return List.of(deviation(), swing(), unbalance(), motorSupply(), phaseSpread(), splitPhase());
    }

    private static Calculation deviation() {
        Parameter<Voltage> highest = Parameter.of("highest", Voltage.class, "highest steady voltage over all loads");
        Parameter<Voltage> lowest = Parameter.of("lowest", Voltage.class, "lowest steady voltage over all loads");
        return Calculation.named("voltage-deviation", "Steady-state voltage deviation")
                .explained("Half the spread from no load to full load, and the reading farthest from rated.").takes(highest, lowest, RATED)
                .by("+/- (U max - U min) / (2 U rated)").validFor("no load to rated load at rated power factor").from(AcSources.STEADY_VOLTAGE)
                .answers(in -> {
                    List<Voltage> readings = List.of(in.get(highest), in.get(lowest));
                    return Answer.of("deviation to each side", SteadyVoltage.deviation(readings, in.get(RATED)), "%")
                            .and("farthest from rated", SteadyVoltage.farthest(readings, in.get(RATED)), "%");
                });
    }

    private static Calculation swing() {
        Parameter<Voltage> reached = Parameter.of("reached", Voltage.class, "extreme r.m.s. voltage of a half cycle or cycle");
        return Calculation.named("voltage-transient", "Transient voltage deviation").explained("How far the voltage dips or rises at a step of load.")
                .takes(reached, RATED).by("(U extreme - U rated) / U rated").validFor("one step of load").from(AcSources.VOLTAGE_TRANSIENT)
                .answers(in -> Answer.of("deviation", VoltageTransient.reached(in.get(reached)).againstRated(in.get(RATED)), "%"));
    }

    private static Calculation unbalance() {
        Parameter<Voltage> first = Parameter.of("line-1", Voltage.class, "voltage between lines 1 and 2");
        Parameter<Voltage> second = Parameter.of("line-2", Voltage.class, "voltage between lines 2 and 3");
        Parameter<Voltage> third = Parameter.of("line-3", Voltage.class, "voltage between lines 3 and 1");
        return Calculation.named("voltage-unbalance", "Voltage unbalance of three phases")
                .explained("The unbalance by its two definitions, and what it leaves of a motor.").takes(first, second, third)
                .by("NEMA: largest deviation / average; IEC: negative / positive sequence, sqrt((1 - r)/(1 + r)), r = sqrt(3 - 6 b)")
                .validFor("three line voltages that close a triangle").from(AcSources.UNBALANCE_NEMA).answers(in -> {
                    LineVoltages lines = new LineVoltages(in.get(first), in.get(second), in.get(third));
                    Ratio nema = lines.unbalanceNema();
                    Answer answer = Answer.of("unbalance by NEMA", nema, "%").and("unbalance by IEC", lines.unbalanceIec(), "%");
                    return nema.si() > 0.05 ? answer.warning("above 5 %: motors must not run")
                            : answer.and("power left of a motor", MotorSupply.deratingByUnbalance(nema), "%");
                });
    }

    private static Calculation motorSupply() {
        Parameter<Ratio> voltage = Parameter.of("voltage-deviation", Ratio.class, "signed deviation of the voltage from rated");
        Parameter<Ratio> frequency = Parameter.of("frequency-deviation", Ratio.class, "signed deviation of the frequency from rated");
        return Calculation.named("motor-supply", "Whether a motor bears its supply").explained("Voltage and frequency against what motors tolerate.")
                .takes(voltage, frequency).by("|u| <= 10 %, |f| <= 5 %, |u| + |f| <= 10 %").validFor("general-purpose motors")
                .from(AcSources.MOTOR_TOLERANCE)
                .answers(in -> {
                    MotorSupply supply = MotorSupply.rated().withVoltage(in.get(voltage)).withFrequency(in.get(frequency));
                    return Answer.of("sum", supply.combined(), "%").and("tolerated", supply.tolerated() ? "yes" : "no");
                });
    }

    private static Calculation phaseSpread() {
        Parameter<Voltage> first = Parameter.of("phase-1", Voltage.class, "line-to-neutral voltage");
        Parameter<Voltage> second = Parameter.of("phase-2", Voltage.class, "line-to-neutral voltage");
        Parameter<Voltage> third = Parameter.of("phase-3", Voltage.class, "line-to-neutral voltage");
        return Calculation.named("phase-spread", "Spread of the phase voltages").explained("Whether the machine itself is balanced.")
                .takes(first, second, third)
                .by("(U max - U min) / U average").validFor("balanced load of 75 to 100 %").from(AcSources.PHASE_BALANCE).answers(in -> {
                    Ratio spread = PhaseBalance.voltageSpread(List.of(in.get(first), in.get(second), in.get(third)));
                    return Answer.of("spread", spread, "%").warningIf(spread.si() > 0.01, "more than 1 % at balanced load");
                });
    }

    private static Calculation splitPhase() {
        Parameter<Current> legA = Parameter.of("leg-a", Current.class, "current in leg A");
        Parameter<Current> legB = Parameter.of("leg-b", Current.class, "current in leg B");
        Parameter<ApparentPower> rated = Parameter.of("rated", ApparentPower.class, "rated apparent power of the set");
        Parameter<Voltage> leg = Parameter.of("leg-voltage", Voltage.class, "voltage from leg to neutral").orElse("120 V");
        return Calculation.named("split-phase", "Balance of a 120/240 V set").explained("How the load lies on the two legs and what each may carry.")
                .takes(legA, legB, rated, leg).by("limit = S / (2 U); neutral = |A - B|; imbalance = (max - min) / max")
                .validFor("loads of like power factor")
                .from(AcSources.SPLIT_PHASE).answers(in -> {
                    SplitPhaseLoad load = new SplitPhaseLoad(in.get(legA), in.get(legB));
                    Ratio share = load.heavierLegShare(in.get(rated), in.get(leg));
                    return Answer.of("heavier leg of its limit", share, "%")
                            .and("limit of a leg", SplitPhaseLoad.legLimit(in.get(rated), in.get(leg)), "A")
                            .and("neutral current", load.neutral(), "A").and("imbalance", load.imbalance(), "%")
                            .and("total", load.total(in.get(leg)), "kVA")
                            .warningIf(share.si() > 1, "the heavier leg is overloaded")
                            .warningIf(load.imbalance().si() > 0.25, "common practice: at most 25 %");
                });
    }
}
