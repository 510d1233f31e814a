// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__CODE_LETTER;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__EFFICIENCY;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__KIND;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__MOTOR_HORSEPOWER;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__PHASE;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__POWER;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__POWER_FACTOR;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__STARTING;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__VOLTAGE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_APPARENT_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER_FACTOR;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__TRANSIENT_REACTANCE;

import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Situation;
import garboard.model.ElectricalLoad;
import garboard.model.LoadKind;
import garboard.model.MotorStarting;
import garboard.physics.ac.Alternator;
import garboard.practice.Figures;
import garboard.quantity.ApparentPower;
import garboard.quantity.Ratio;

/** How far the voltage dips when a motor starts: source behind the transient reactance. */
final class MotorStartDip {

    /** Usual where the reactance is not known. Common practice. */
    private static final Ratio LEAST_REACTANCE = Ratio.of(0.15);
    private static final Ratio GREATEST_REACTANCE = Ratio.of(0.30);

    /** Multiple of the running current that a soft starter is set to. Common practice. */
    private static final Ratio SOFT_START = Ratio.of(3);

    /** Below this part of the set even a start with ten times the running current dips by less than 15 %, at the greatest usual reactance. */
    private static final double SMALL = 0.05;

    private MotorStartDip() {
    }

    /** Everything but limit and authority. */
    static Check.Builder<ElectricalLoad> check(String id) {
        return FullLoad.apparentNeeded(Check.check(id, ElectricalLoad.class)
            .among(load -> load.getKind() == LoadKind.MOTOR, path(ELECTRICAL_LOAD__KIND))
            .applies(startsWithInrush())
            .applies(largeEnough()))
            .needsWhen(s -> isDirect(s.subject()) && MotorStartPower.letter(s.subject()).isEmpty(), path(ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT))
            .needsWhen(s -> isDirect(s.subject()) && s.subject().getLockedRotorCurrent() == null && MotorStartPower.letter(s.subject()).isPresent(),
                path(ELECTRICAL_LOAD__MOTOR_HORSEPOWER))
            .needsWhen(s -> s.subject().getLockedRotorCurrent() != null, path(ELECTRICAL_LOAD__VOLTAGE), path(GENERATOR_SET__PHASES))
            .uses(ELECTRICAL_LOAD__CODE_LETTER, ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT, ELECTRICAL_LOAD__PHASE, ELECTRICAL_LOAD__EFFICIENCY)
            .uses(GENERATOR_SET__TRANSIENT_REACTANCE, GENERATOR_SET__PHASES);
    }

    private static boolean isDirect(ElectricalLoad load) {
        return load.getStarting() != MotorStarting.SOFT_START;
    }

    /** The dip; where the reactance is not known it carries what it may be off by. */
    static Ratio of(Situation<ElectricalLoad> s) {
        Ratio reactance = s.set().getTransientReactance();
        if (reactance != null) {
            return dip(s, reactance);
        }
        double least = dip(s, LEAST_REACTANCE).si();
        double most = dip(s, GREATEST_REACTANCE).si();
        return Ratio.of((least + most) / 2).withAccuracy(Ratio.of((most - least) / 2));
    }

    private static Ratio dip(Situation<ElectricalLoad> s, Ratio reactance) {
        double part = Phases.of(s.subject(), s.set().getPhases()).partOfTheSet();
        return new Alternator(ApparentPower.of(part * FullLoad.apparent(s).si()), reactance).dipStarting(start(s));
    }

    static ApparentPower start(Situation<ElectricalLoad> s) {
        return MotorStartPower.of(s.subject(), Phases.of(s.subject(), s.set().getPhases()).areThree(), SOFT_START);
    }

    static String inWords(Situation<ElectricalLoad> s) {
        return "the start takes " + Figures.both(start(s)) + " and lets the voltage dip by " + Figures.metric(of(s))
            + (s.set().getTransientReactance() == null ? ", for a transient reactance between 0.15 and 0.30" : "");
    }

    private static Condition<ElectricalLoad> startsWithInrush() {
        return Condition.<ElectricalLoad>when("motors that a drive does not run up").known(path(ELECTRICAL_LOAD__STARTING))
            .test(s -> s.subject().getStarting() != MotorStarting.VARIABLE_SPEED, "a drive runs the motor up without inrush");
    }

    private static Condition<ElectricalLoad> largeEnough() {
        return Condition.<ElectricalLoad>when("motors of at least 5 % of the set; ten times the current of a smaller one dips the voltage by less than 15 %")
            .known(path(ELECTRICAL_LOAD__POWER), path(ELECTRICAL_LOAD__POWER_FACTOR))
            .uses(path(ELECTRICAL_LOAD__EFFICIENCY), path(ELECTRICAL_LOAD__PHASE), path(GENERATOR_SET__PHASES), path(GENERATOR_SET__RATED_APPARENT_POWER),
                path(GENERATOR_SET__RATED_POWER), path(GENERATOR_SET__RATED_POWER_FACTOR))
            .test(s -> !FullLoad.isKnown(s) || MotorStartPower.running(s.subject()).si()
                >= SMALL * FullLoad.apparent(s).si() * Phases.of(s.subject(), s.set().getPhases()).partOfTheSet(),
                "the motor is too small to matter: less than 5 % of the set");
    }
}
