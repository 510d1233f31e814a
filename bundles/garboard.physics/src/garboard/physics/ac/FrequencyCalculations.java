// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Inputs;
import garboard.physics.calculation.Parameter;
import garboard.quantity.Frequency;
import garboard.quantity.Ratio;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

/** The calculations of frequency and of the performance class. */
final class FrequencyCalculations {

    private static final Parameter<Frequency> RATED = Parameter.of("rated", Frequency.class, "rated frequency");
    private static final Parameter<Integer> POLES = Parameter.wholeNumber("poles", "poles of the alternator").orElse("4");

    /** Fuel of the engine as far as the class limits care. */
    enum Ignition {
        COMPRESSION, SPARK
    }

    /** Size of the set as far as the class limits care. */
    enum Size {
        ABOVE_10_KW, UP_TO_10_KW
    }

    private static final Parameter<Ignition> IGNITION = Parameter.choice("ignition", Ignition.class, "how the engine ignites").orElse("compression");
    private static final Parameter<Size> SIZE = Parameter.choice("set-size", Size.class, "rated power").orElse("above-10-kw");

    private FrequencyCalculations() {
    }

    static List<Calculation> all() {
        return List.of(droop(), band(), drop(), rise(), synchronousSpeed(), synchronousFrequency(), noLoad(), performanceClass());
    }

    private static Calculation droop() {
        Parameter<Frequency> noLoad = Parameter.of("no-load", Frequency.class, "steady frequency without load");
        Parameter<Frequency> loaded = Parameter.of("declared-power", Frequency.class, "steady frequency at the declared power");
        return Calculation.named("frequency-droop", "Frequency droop").explained("How far the frequency settles from no load to the declared power.")
                .takes(noLoad, loaded).by("(f no load - f declared) / f declared").validFor("steady frequencies of one governor setting")
                .from(AcSources.DROOP)
                .answers(in -> Answer.of("droop", SteadyFrequencies.noLoad(in.get(noLoad)).atDeclaredPower(in.get(loaded)).droop(), "%"));
    }

    private static Calculation band() {
        Parameter<Frequency> highest = Parameter.of("highest", Frequency.class, "highest reading at constant load");
        Parameter<Frequency> lowest = Parameter.of("lowest", Frequency.class, "lowest reading at constant load");
        return Calculation.named("frequency-band", "Steady-state frequency band").explained("How wide the frequency wanders at constant load.")
                .takes(highest, lowest, RATED).by("(f max - f min) / f rated, the full width").validFor("30 s or more at constant load")
                .from(AcSources.FREQUENCY_BAND)
                .answers(in -> Answer.of("band", FrequencyBand.width(List.of(in.get(highest), in.get(lowest)), in.get(RATED)), "%"));
    }

    private static Calculation drop() {
        Parameter<Frequency> reached = Parameter.of("reached", Frequency.class, "lowest frequency after the load is taken on");
        return Calculation.named("frequency-drop", "Transient frequency deviation when load is taken on")
                .explained("How far the frequency dips below rated.").takes(reached, RATED).by("(f extreme - f rated) / f rated")
                .validFor("one step of load")
                .from(AcSources.FREQUENCY_TRANSIENT)
                .answers(in -> Answer.of("deviation", FrequencyTransient.reached(in.get(reached)).againstRated(in.get(RATED)), "%"));
    }

    private static Calculation rise() {
        Parameter<Frequency> reached = Parameter.of("reached", Frequency.class, "highest frequency after the load is thrown off");
        Parameter<Frequency> initial = Parameter.of("initial", Frequency.class, "steady frequency before");
        return Calculation.named("frequency-rise", "Transient frequency deviation when load is thrown off")
                .explained("How far the frequency rises above where it was.").takes(reached, initial, RATED).by("(f extreme - f initial) / f rated")
                .validFor("one step of load").from(AcSources.FREQUENCY_TRANSIENT)
                .answers(in -> Answer.of("deviation", FrequencyTransient.reached(in.get(reached)).from(in.get(initial)).onRated(in.get(RATED)), "%"));
    }

    private static Calculation synchronousSpeed() {
        Parameter<Frequency> frequency = Parameter.of("frequency", Frequency.class, "output frequency");
        return Calculation.named("synchronous-speed", "Speed of a set at a frequency")
                .explained("The engine speed that belongs to an output frequency.")
                .takes(frequency, POLES).by("n = 120 f / p").validFor("an even number of poles").from(AcSources.BASIC)
                .answers(in -> Answer.of("speed", SynchronousSpeed.speed(in.get(frequency), in.get(POLES)), "r/min"));
    }

    private static Calculation synchronousFrequency() {
        Parameter<RotationalSpeed> speed = Parameter.of("speed", RotationalSpeed.class, "speed of the shaft");
        return Calculation.named("synchronous-frequency", "Frequency of a set at a speed")
                .explained("The output frequency that belongs to an engine speed.")
                .takes(speed, POLES).by("f = n p / 120").validFor("an even number of poles").from(AcSources.BASIC)
                .answers(in -> Answer.of("frequency", SynchronousSpeed.frequency(in.get(speed), in.get(POLES)), "Hz"));
    }

    private static Calculation noLoad() {
        Parameter<Voltage> voltage = Parameter.of("rated-voltage", Voltage.class, "rated voltage");
        Parameter<PerformanceClass> wanted = Parameter.choice("class", PerformanceClass.class, "performance class");
        return Calculation.named("no-load-limits", "Highest voltage and frequency without load")
                .explained("What a set may show at most before any load is on.")
                .takes(voltage, RATED, wanted, SIZE).by("rated x (1 + class figure)").validFor("classes G1 to G3").from(AcSources.NO_LOAD_CHECK)
                .answers(in -> Answer.of("highest voltage", NoLoadCheck.highestVoltage(in.get(voltage), in.get(wanted),
                        set(in.get(SIZE), Ignition.COMPRESSION)), "V")
                        .and("highest frequency", NoLoadCheck.highestFrequency(in.get(RATED), in.get(wanted)), "Hz"));
    }

    private static Calculation performanceClass() {
        Map<ClassCriterion, Parameter<Optional<Ratio>>> shares = new LinkedHashMap<>();
        Map<ClassCriterion, Parameter<Optional<TimeSpan>>> times = new LinkedHashMap<>();
        for (ClassCriterion criterion : ClassCriterion.values()) {
            String name = word(criterion);
            if (criterion.isTime()) {
                times.put(criterion, Parameter.of(name, TimeSpan.class, "measured " + name.replace('-', ' ')).optional());
            } else {
                shares.put(criterion, Parameter.of(name, Ratio.class, "measured " + name.replace('-', ' ')).optional());
            }
        }
        Parameter<?>[] taken = Stream.of(shares.values(), times.values(), List.of(IGNITION, SIZE)).flatMap(Collection::stream)
                .toArray(Parameter<?>[]::new);
        return Calculation.named("performance-class", "Performance class that measured figures reach")
                .explained("The best class of which every given figure keeps the limit, and what prevents the next.").takes(taken)
                .by("each figure, without its sign, at most the limit of the class").validFor("classes G1 to G3; G4 is by agreement")
                .from(AcSources.PERFORMANCE_CLASS).answers(in -> classAnswer(evaluation(in, shares, times)));
    }

    private static ClassEvaluation evaluation(Inputs in, Map<ClassCriterion, Parameter<Optional<Ratio>>> shares,
            Map<ClassCriterion, Parameter<Optional<TimeSpan>>> times) {
        ClassEvaluation evaluation = ClassEvaluation.of(set(in.get(SIZE), in.get(IGNITION)));
        for (var share : shares.entrySet()) {
            evaluation = in.get(share.getValue()).map(with(evaluation, share.getKey())).orElse(evaluation);
        }
        for (var time : times.entrySet()) {
            ClassEvaluation soFar = evaluation;
            evaluation = in.get(time.getValue()).map(value -> soFar.with(time.getKey(), value)).orElse(soFar);
        }
        return evaluation;
    }

    private static Function<Ratio, ClassEvaluation> with(ClassEvaluation soFar, ClassCriterion criterion) {
        return value -> soFar.with(criterion, value);
    }

    private static Answer classAnswer(ClassEvaluation evaluation) {
        Answer answer = Answer.of("class reached", evaluation.reached().map(PerformanceClass::name).orElse("none"));
        for (ClassEvaluation.Obstacle obstacle : evaluation.preventingNext()) {
            answer = answer.and("limit exceeded: " + word(obstacle.criterion()), obstacle.limit(), obstacle.criterion().isTime() ? "s" : "%");
        }
        List<ClassCriterion> missing = evaluation.notMeasured();
        return answer.warningIf(!missing.isEmpty(), "not given: " + missing.stream().map(FrequencyCalculations::word)
                .collect(Collectors.joining(", ")));
    }

    private static SetTraits set(Size size, Ignition ignition) {
        return new SetTraits(ignition == Ignition.SPARK, size == Size.UP_TO_10_KW);
    }

    private static String word(ClassCriterion criterion) {
        return criterion.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
