// SPDX-License-Identifier: EPL-2.0
package garboard.physics.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Parameter;
import garboard.quantity.Frequency;
import garboard.quantity.Power;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

/** The calculations of measurement, by name. */
public final class MeasurementCalculations {

    private static final int MOST_STEPS = 6;

    private MeasurementCalculations() {
    }

    public static List<Calculation> all() {
        return List.of(voltageUncertainty(), droopUncertainty(), decision("limit-decision", "A measured share against a limit", Ratio.class, "%"),
                decision("voltage-decision", "A measured voltage against a limit", Voltage.class, "V"), droopRegression(), steadiness());
    }

    private static Calculation voltageUncertainty() {
        Parameter<Voltage> reading = Parameter.of("reading", Voltage.class, "mean of the readings");
        Parameter<Ratio> ofReading = Parameter.of("of-reading", Ratio.class, "accuracy, share of the reading");
        Parameter<Integer> digits = Parameter.wholeNumber("digits", "accuracy, steps of the last place").orElse("0");
        Parameter<Voltage> step = Parameter.of("step", Voltage.class, "one step of the last place").orElse("0.1 V");
        Parameter<Voltage> scatter = Parameter.of("scatter", Voltage.class, "standard deviation of the readings").orElse("0 V");
        Parameter<Integer> readings = Parameter.wholeNumber("readings", "how many readings").orElse("2");
        return Calculation.named("voltage-uncertainty", "Uncertainty of a voltage")
                .explained("How far a voltage may be off, from instrument and scatter.")
                .takes(reading, ofReading, digits, step, scatter, readings).by("u = sqrt((half width / sqrt(3))^2 + s^2 / n), U = 2 u")
                .validFor("independent readings of one quantity").from(MeasurementSources.UNCERTAINTY).answers(in -> {
                    Voltage halfWidth = new InstrumentAccuracy<>(in.get(ofReading), in.get(digits), in.get(step)).halfWidth(in.get(reading));
                    Uncertainty<Voltage> uncertainty = Uncertainty.ofHalfWidth(halfWidth).withScatter(in.get(scatter), in.get(readings));
                    return Answer.of("expanded uncertainty", uncertainty.expanded(), "V").and("standard uncertainty", uncertainty.standard(), "V")
                            .and("half width", halfWidth, "V");
                });
    }

    private static Calculation droopUncertainty() {
        Parameter<Frequency> noLoad = Parameter.of("no-load", Frequency.class, "frequency without load");
        Parameter<Frequency> loaded = Parameter.of("declared-power", Frequency.class, "frequency at the declared power");
        Parameter<Ratio> ofReading = Parameter.of("of-reading", Ratio.class, "accuracy, share of the reading");
        Parameter<Integer> digits = Parameter.wholeNumber("digits", "accuracy, steps of the last place").orElse("0");
        Parameter<Frequency> step = Parameter.of("step", Frequency.class, "one step of the last place").orElse("0.1 Hz");
        return Calculation.named("droop-uncertainty", "Uncertainty of a droop").explained("How far a droop from two readings may be off.")
                .takes(noLoad, loaded, ofReading, digits, step).by("u = sqrt((u0 / f1)^2 + (f0 u1 / f1^2)^2), U = 2 u")
                .validFor("independent readings")
                .from(MeasurementSources.UNCERTAINTY).answers(in -> {
                    var meter = new InstrumentAccuracy<>(in.get(ofReading), in.get(digits), in.get(step));
                    return Answer.of("expanded uncertainty", Uncertainty.ofDroop(reading(meter, in.get(noLoad)), reading(meter, in.get(loaded)))
                            .expanded(), "%");
                });
    }

    private static Uncertainty.FrequencyReading reading(InstrumentAccuracy<Frequency> meter, Frequency value) {
        return new Uncertainty.FrequencyReading(value, Uncertainty.ofHalfWidth(meter.halfWidth(value)));
    }

    private static <Q extends Quantity<Q>> Calculation decision(String name, String title, Class<Q> kind, String unit) {
        Parameter<Q> measured = Parameter.of("measured", kind, "measured value");
        Parameter<Q> limit = Parameter.of("limit", kind, "limit");
        Parameter<Q> guard = Parameter.of("uncertainty", kind, "expanded uncertainty");
        Parameter<GuardBandDecision.Side> side = Parameter.choice("side", GuardBandDecision.Side.class, "what the limit permits").orElse("at-most");
        return Calculation.named(name, title).explained("Pass, conditional pass, conditional fail or fail, with the uncertainty as guard band.")
                .takes(measured, limit, guard, side)
                .by("pass up to limit - U, conditional pass up to limit, conditional fail up to limit + U, fail beyond")
                .validFor("an expanded uncertainty of 95 %; a safety limit is kept by a plain pass only").from(MeasurementSources.GUARD_BAND)
                .answers(in -> {
                    var decision = new GuardBandDecision<>(in.get(measured), in.get(limit), in.get(side), in.get(guard));
                    String word = switch (decision.outcome()) {
                        case PASS -> "pass";
                        case CONDITIONAL_PASS -> "conditional pass";
                        case CONDITIONAL_FAIL -> "conditional fail";
                        case FAIL -> "fail";
                    };
                    return Answer.of("outcome", word).and("margin", decision.margin(), unit);
                });
    }

    private static Calculation droopRegression() {
        Parameter<Power> rated = Parameter.of("rated", Power.class, "rated power");
        Parameter<Frequency> ratedFrequency = Parameter.of("rated-frequency", Frequency.class, "rated frequency");
        List<Parameter<Optional<Power>>> loads = IntStream.rangeClosed(1, MOST_STEPS)
                .mapToObj(i -> Parameter.of("load-" + i, Power.class, "load of step " + i).optional()).toList();
        List<Parameter<Optional<Frequency>>> frequencies = IntStream.rangeClosed(1, MOST_STEPS)
                .mapToObj(i -> Parameter.of("frequency-" + i, Frequency.class, "steady frequency of step " + i).optional()).toList();
        List<Parameter<?>> taken = new ArrayList<>(List.of(rated, ratedFrequency));
        IntStream.range(0, MOST_STEPS).forEach(i -> taken.addAll(List.of(loads.get(i), frequencies.get(i))));
        return Calculation.named("droop-regression", "Droop by a line through load steps")
                .explained("Droop with its standard error from four to six steady steps, and whether the line is straight.")
                .takes(taken.toArray(Parameter<?>[]::new))
                .by("least squares; droop = -slope P rated / f rated").validFor("four steps of different load or more; refused below")
                .from(MeasurementSources.DROOP_REGRESSION).answers(in -> {
                    List<DroopRegression.Step> steps = new ArrayList<>();
                    for (int i = 0; i < MOST_STEPS; i++) {
                        Optional<Frequency> frequency = in.get(frequencies.get(i));
                        in.get(loads.get(i)).flatMap(load -> frequency.map(f -> new DroopRegression.Step(load, f))).ifPresent(steps::add);
                    }
                    DroopRegression line = DroopRegression.through(steps, new DroopRegression.Plate(in.get(rated), in.get(ratedFrequency)));
                    return Answer.of("droop", line.droop(), "%").and("standard error", line.standardError(), "%")
                            .and("no-load frequency", line.noLoad(), "Hz")
                            .and("determination R2", line.determination(), "1").and("largest residual", line.largestResidual(), "Hz")
                            .and("droop of the end points", line.droopOfEndPoints(), "%").and("isochronous", line.isIsochronous() ? "yes" : "no")
                            .warningIf(line.determination().si() < 0.95 && !line.isIsochronous(), "not a straight line: take the end points");
                });
    }

    private static Calculation steadiness() {
        Parameter<TimeSpan> interval = Parameter.of("interval", TimeSpan.class, "time between two readings").orElse("5 min");
        Parameter<TimeSpan> window = Parameter.of("window", TimeSpan.class, "last stretch that is looked at").orElse("10 min");
        Parameter<TemperatureDifference> permitted = Parameter.of("permitted", TemperatureDifference.class, "permitted change over the window")
                .orElse("2 K");
        List<Parameter<Temperature>> needed = IntStream.rangeClosed(1, 3)
                .mapToObj(i -> Parameter.of("reading-" + i, Temperature.class, "reading " + i)).toList();
        Parameter<Optional<Temperature>> fourth = Parameter.of("reading-4", Temperature.class, "reading 4").optional();
        return Calculation.named("temperature-steadiness", "Whether a temperature has settled")
                .explained("The change over the last minutes by a line through them.")
                .takes(needed.get(0), needed.get(1), needed.get(2), fourth, interval, window, permitted).by("least-squares slope x window")
                .validFor("three readings within the window or more; refused below").from(MeasurementSources.THERMAL_STEADINESS).answers(in -> {
                    List<Temperature> readings = new ArrayList<>(needed.stream().map(in::get).toList());
                    in.get(fourth).ifPresent(readings::add);
                    Trace<Temperature> trace = Trace.every(in.get(interval), readings);
                    return Answer.of("change", Steadiness.changeOverLast(in.get(window), trace), "K")
                            .and("settled", Steadiness.within(in.get(permitted), in.get(window), trace) ? "yes" : "no");
                });
    }
}
