// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.List;
import java.util.Optional;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Parameter;
import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/** The calculations of starting motors. */
final class MotorCalculations {

    private static final Parameter<Ratio> REACTANCE = Parameter
            .of("reactance", Ratio.class, "transient reactance of the alternator, per unit; 0.15 to 0.30 where unknown").orElse("0.2");
    private static final Parameter<Voltage> LINE = Parameter.of("voltage", Voltage.class, "voltage between lines");
    private static final Parameter<PhaseSystem> PHASES = Parameter.choice("phases", PhaseSystem.class, "how it is wired").orElse("single-phase");
    private static final Parameter<ApparentPower> RATED = Parameter.of("rated", ApparentPower.class, "rated apparent power of the set");
    private static final Parameter<ApparentPower> STARTING = Parameter.of("starting", ApparentPower.class, "apparent power while starting");

    private MotorCalculations() {
    }

    static List<Calculation> all() {
        return List.of(codeLetter(), lockedRotor(), reducedStart(), dip(), largestStart());
    }

    private static Calculation codeLetter() {
        Parameter<Power> shaft = Parameter.of("power", Power.class, "rated shaft power");
        Parameter<CodeLetter> letter = Parameter.choice("code-letter", CodeLetter.class, "code letter of the plate");
        return Calculation.named("motor-code-letter", "Starting power by the code letter")
                .explained("What a motor draws at locked rotor, and the current of it.")
                .takes(shaft, letter, LINE, PHASES).by("hp x kVA per hp; I = S / U, three-phase S / (sqrt(3) U)")
                .validFor("letters A to V; V has no upper end")
                .from(AcSources.CODE_LETTERS).answers(in -> {
                    ApparentPower lowest = in.get(letter).lowest(in.get(shaft));
                    Optional<ApparentPower> highest = in.get(letter).highest(in.get(shaft));
                    ApparentPower counted = highest.orElse(lowest);
                    return Answer.of("up to", counted, "kVA").and("from", lowest, "kVA")
                            .and("current", AcPower.current(counted, in.get(LINE), in.get(PHASES)), "A")
                            .warningIf(highest.isEmpty(), "letter V has no upper end: the figures are the least");
                });
    }

    private static Calculation lockedRotor() {
        Parameter<Current> current = Parameter.of("locked-rotor-current", Current.class, "locked-rotor current of the plate");
        return Calculation.named("motor-locked-rotor", "Starting power by the locked-rotor current").explained("What a motor draws at locked rotor.")
                .takes(LINE, current, PHASES).by("U I; three-phase sqrt(3) U I").validFor("direct-on-line starting").from(AcSources.BASIC)
                .answers(in -> Answer.of("starting power", MotorStart.lockedRotor(in.get(LINE), in.get(current), in.get(PHASES)), "kVA"));
    }

    private static Calculation reducedStart() {
        Parameter<ApparentPower> direct = Parameter.of("direct", ApparentPower.class, "apparent power of a direct start");
        Parameter<ApparentPower> running = Parameter.of("running", ApparentPower.class, "apparent power while running");
        Parameter<Ratio> limit = Parameter.of("current-limit", Ratio.class, "limit of the soft starter, times the running current").orElse("3");
        return Calculation.named("motor-reduced-start", "Start with star-delta or soft starter")
                .explained("What reduced-voltage starting makes of a start.")
                .takes(direct, running, limit).by("star-delta: a third; soft starter: limit x running").validFor("limits from 1 to 8")
                .from(AcSources.REDUCED_START).answers(in -> Answer.of("star-delta", MotorStart.starDelta(in.get(direct)), "kVA")
                        .and("soft starter", MotorStart.softStarter(in.get(running), in.get(limit)), "kVA"));
    }

    private static Calculation dip() {
        return Calculation.named("starting-dip", "Voltage dip at a motor start").explained("How far the set's voltage sags when a motor starts.")
                .takes(STARTING, RATED, REACTANCE).by("z / (1 + z), z = X'd S start / S rated")
                .validFor("an otherwise unloaded set; regulator and cable left out")
                .from(AcSources.STARTING_DIP)
                .answers(in -> Answer.of("dip", new Alternator(in.get(RATED), in.get(REACTANCE)).dipStarting(in.get(STARTING)), "%"));
    }

    private static Calculation largestStart() {
        Parameter<Ratio> allowed = Parameter.of("allowed-dip", Ratio.class, "dip that may not be passed").orElse("20 %");
        Parameter<Optional<ApparentPower>> starting = Parameter.of("starting", ApparentPower.class, "a start that has to be managed").optional();
        return Calculation.named("largest-start", "Largest start for a voltage dip")
                .explained("The start that just gives a dip, and the least set that manages a given one.").takes(RATED, REACTANCE, allowed, starting)
                .by("S rated d / (X (1 - d)); X S start (1 - d) / d").validFor("dips up to 90 %").from(AcSources.STARTING_DIP).answers(in -> {
                    Alternator machine = new Alternator(in.get(RATED), in.get(REACTANCE));
                    Answer largest = Answer.of("largest start", machine.largestStart(in.get(allowed)), "kVA");
                    return in.get(starting).map(start -> largest.and("least rating for the start", machine.leastRating(start, in.get(allowed)),
                            "kVA"))
                            .orElse(largest);
                });
    }
}
