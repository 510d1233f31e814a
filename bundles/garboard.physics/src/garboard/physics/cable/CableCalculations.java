// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Parameter;
import garboard.quantity.Area;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.ResistancePerLength;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/** The calculations of conductors, by name. */
public final class CableCalculations {

    static final Parameter<String> SIZE = Parameter.oneOf("size",
            Stream.concat(ConductorSeries.AWG.stream(), ConductorSeries.IEC.stream()).map(ConductorSize::toString).toList(),
                    "size printed on the jacket");
    private static final Parameter<StrandClass> MAKE = Parameter.choice("make", StrandClass.class, "IEC 60228 class, for metric sizes")
            .orElse("class-5-coated");
    private static final Parameter<Temperature> CONDUCTOR = Parameter.of("conductor-temperature", Temperature.class, "temperature of the copper")
            .orElse("50 degC");
    private static final Parameter<Current> CURRENT = Parameter.of("current", Current.class, "current in both conductors");
    private static final Parameter<Length> LOOP = Parameter.of("loop", Length.class, "length out plus length back");
    private static final Parameter<Voltage> ALLOWED = Parameter.of("allowed-drop", Voltage.class, "permitted drop over the loop");

    private CableCalculations() {
    }

    public static List<Calculation> all() {
        return Stream.concat(Stream.of(resistance(), drop(), threePhaseDrop(), size(), circularMils(), allowedDrop(), crankingCircuit()),
                AmpacityCalculations.all().stream()).toList();
    }

    private static Calculation resistance() {
        return Calculation.named("conductor-resistance", "Resistance of a conductor")
                .explained("Ohms per length of one conductor, cold and at its temperature.")
                .takes(SIZE, CONDUCTOR, MAKE).by("R20 of IEC 60228 or 17.241 ohm mm2/km / A; R20 (1 + 0.00393 (T - 20 degC))")
                .validFor("copper, -50 to 200 degC; refused outside").from(CableSources.IEC_60228).answers(in -> {
                    ResistancePerLength at20 = ConductorResistance.at20(ConductorSize.valueOf(in.get(SIZE)), in.get(MAKE));
                    return Answer.of("resistance", ConductorResistance.atTemperature(at20, in.get(CONDUCTOR)), "ohm/km", "ohm/1000ft")
                            .and("at 20 degC", at20, "ohm/km", "ohm/1000ft").and("area", ConductorSize.valueOf(in.get(SIZE)).area(), "mm2", "cmil");
                });
    }

    private static Calculation drop() {
        Parameter<Voltage> nominal = Parameter.of("nominal", Voltage.class, "nominal voltage").orElse("12 V");
        return Calculation.named("voltage-drop", "Voltage drop of a pair of conductors").explained("The volts lost on the way out and back.")
                .takes(SIZE, CURRENT, LOOP, CONDUCTOR, MAKE, nominal).by("I R(T) L, L out and back")
                .validFor("direct current, or alternating current in small sizes")
                .from(CableSources.ROUND_TRIP_DROP).answers(in -> {
                    ResistancePerLength at20 = ConductorResistance.at20(ConductorSize.valueOf(in.get(SIZE)), in.get(MAKE));
                    ResistancePerLength hot = ConductorResistance.atTemperature(at20, in.get(CONDUCTOR));
                    Voltage drop = VoltageDrop.roundTrip(in.get(CURRENT), hot, in.get(LOOP));
                    return Answer.of("voltage drop", drop, "V").and("share of nominal", VoltageDrop.share(drop, in.get(nominal)), "%");
                });
    }

    private static Calculation threePhaseDrop() {
        Parameter<Current> line = Parameter.of("current", Current.class, "current in each line");
        Parameter<Length> run = Parameter.of("run", Length.class, "length of one conductor");
        Parameter<Voltage> nominal = Parameter.of("nominal", Voltage.class, "voltage between the lines").orElse("400 V");
        return Calculation.named("voltage-drop-three-phase", "Voltage drop of a three-phase cable")
                .explained("The volts lost between the lines at a balanced load.").takes(SIZE, line, run, CONDUCTOR, MAKE, nominal)
                .by("sqrt(3) I R(T) L").validFor("balanced load, reactance left out").from(CableSources.THREE_PHASE_DROP).answers(in -> {
                    ResistancePerLength at20 = ConductorResistance.at20(ConductorSize.valueOf(in.get(SIZE)), in.get(MAKE));
                    ResistancePerLength hot = ConductorResistance.atTemperature(at20, in.get(CONDUCTOR));
                    Voltage drop = VoltageDrop.threePhase(in.get(line), hot, in.get(run));
                    return Answer.of("voltage drop", drop, "V").and("share of nominal", VoltageDrop.share(drop, in.get(nominal)), "%");
                });
    }

    private static Calculation size() {
        return Calculation.named("cable-size", "Smallest conductor for a voltage drop")
                .explained("The smallest metric size and American gauge that keep within a drop; the permitted current is a second condition.")
                .takes(CURRENT, LOOP, ALLOWED, CONDUCTOR, MAKE).by("first size of the series with I R(T) L at most the permitted drop")
                .validFor("0.5 to 630 mm2, 18 AWG to 4/0 AWG; larger needs are answered in words").from(CableSources.ROUND_TRIP_DROP).answers(in -> {
                    CableTask task = new CableTask(in.get(CURRENT), in.get(LOOP), in.get(ALLOWED), in.get(CONDUCTOR));
                    return Answer.of("metric size", word(CableSizing.smallestIec(task, in.get(MAKE))))
                            .and("American gauge", word(CableSizing.smallestAwg(task)));
                });
    }

    private static Calculation circularMils() {
        return Calculation.named("circular-mils", "Conductor area by the circular-mil method")
                .explained("The area that the boat trade's formula asks for, and the gauges that have it.").takes(CURRENT, LOOP, ALLOWED)
                .by("CM = 10.75 I L / E, L in ft out and back, E in V").validFor("copper at about 29 degC").from(CableSources.CIRCULAR_MIL_METHOD)
                .answers(in -> {
                    Area area = VoltageDrop.circularMilArea(in.get(CURRENT), in.get(LOOP), in.get(ALLOWED));
                    return Answer.of("area", area, "cmil", "mm2").and("American gauge", word(CableSizing.smallestAwg(area)))
                            .and("SAE gauge", word(CableSizing.smallestSaeGauge(area)))
                            .and("metric size", word(ConductorSeries.smallest(ConductorSeries.IEC, area)));
                });
    }

    private static Calculation allowedDrop() {
        Parameter<Voltage> nominal = Parameter.of("nominal", Voltage.class, "nominal voltage");
        Parameter<DropAllowance> circuit = Parameter.choice("circuit", DropAllowance.class, "what the circuit feeds");
        return Calculation.named("allowed-drop", "Permitted voltage drop")
                .explained("3 % for critical circuits, 10 % for others, of the nominal voltage.")
                .takes(nominal, circuit).by("share x nominal voltage").validFor("ordinary direct-current circuits; cranking circuits have their own")
                .from(CableSources.DROP_ALLOWANCE).answers(in -> Answer.of("permitted drop", in.get(circuit).of(in.get(nominal)), "V"));
    }

    private static Calculation crankingCircuit() {
        Parameter<StarterDuty> duty = Parameter.choice("duty", StarterDuty.class, "kind of starter");
        Parameter<Current> cranking = Parameter.of("cranking-current", Current.class, "current while cranking");
        Parameter<Optional<Voltage>> measured = Parameter.of("measured-drop", Voltage.class, "drop measured from the posts to the starter and back")
                .optional();
        return Calculation.named("cranking-circuit", "Permitted drop of a cranking circuit")
                .explained("What the starter cables and their joints may lose, and what a measured drop says about them.")
                .takes(duty, cranking, measured)
                .by("R permitted x I; measured drop / I").validFor("at 20 degC, posts to starter terminals").from(CableSources.CRANKING_CIRCUIT)
                .answers(in -> {
                    Answer permitted = Answer.of("permitted drop", in.get(duty).allowedDrop(in.get(cranking)), "V")
                            .and("permitted resistance", in.get(duty).allowedResistance(), "mohm");
                    return in.get(measured)
                            .map(drop -> permitted.and("measured resistance", StarterDuty.measuredResistance(drop, in.get(cranking)), "mohm"))
                            .orElse(permitted);
                });
    }

    static String word(Optional<ConductorSize> size) {
        return size.map(ConductorSize::toString).orElse("none: shorten the run");
    }
}
