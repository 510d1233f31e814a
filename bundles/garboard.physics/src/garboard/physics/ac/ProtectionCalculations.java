// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.List;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Parameter;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.Resistance;
import garboard.quantity.Temperature;

/** The calculations of protection and insulation. */
final class ProtectionCalculations {

    private ProtectionCalculations() {
    }

    static List<Calculation> all() {
        return List.of(tripAbility(), breakTime(), protectiveConductor(), insulation());
    }

    private static Calculation tripAbility() {
        Parameter<Current> rated = Parameter.of("rated-current", Current.class, "rated current of the set");
        Parameter<Ratio> multiple = Parameter.of("multiple", Ratio.class, "sustained short-circuit current over rated").orElse("3");
        Parameter<Current> rating = Parameter.of("breaker", Current.class, "rated current of the breaker");
        Parameter<Breaker.Curve> curve = Parameter.choice("curve", Breaker.Curve.class, "its trip curve").orElse("c");
        return Calculation.named("trip-ability", "Whether a set trips a breaker")
                .explained("Whether the set's short-circuit current trips a breaker at once.")
                .takes(rated, rating, curve, multiple).by("multiple x rated current against the curve's band: B 3 to 5, C 5 to 10, D 10 to 20")
                .validFor("miniature circuit breakers; figures from memory").from(AcSources.TRIP_BANDS).answers(in -> {
                    Current fault = Breaker.sustainedShortCircuit(in.get(rated), in.get(multiple));
                    Breaker breaker = new Breaker(in.get(rating), in.get(curve));
                    String word = switch (breaker.on(fault)) {
                        case SURE -> "trips at once";
                        case UNSURE -> "may or may not trip at once";
                        case NONE -> "does not trip at once";
                    };
                    return Answer.of("breaker", word).and("short-circuit current", fault, "A").and("holds up to", breaker.holdsUpTo(), "A")
                            .and("trips from", breaker.tripsFrom(), "A");
                });
    }

    private static Calculation breakTime() {
        Parameter<ResidualCurrentDevice> device = Parameter.choice("device", ResidualCurrentDevice.class, "kind of device").orElse("general");
        Parameter<Ratio> multiple = Parameter.of("multiple", Ratio.class, "test current over rated residual current").orElse("1");
        return Calculation.named("residual-break-time", "Break time of a residual-current device")
                .explained("The longest time it may take at a test current.")
                .takes(device, multiple).by("table at 1, 2 and 5 times; between them the time of the lower point").validFor("1 time and more")
                .from(AcSources.RESIDUAL_CURRENT).answers(in -> {
                    Answer longest = Answer.of("longest", in.get(device).longest(in.get(multiple)), "ms")
                    .and("boat rules", ResidualCurrentDevice.BOAT_LIMIT, "ms");
                    return in.get(device).shortest(in.get(multiple)).map(time -> longest.and("shortest", time, "ms")).orElse(longest);
                });
    }

    private static Calculation protectiveConductor() {
        Parameter<Length> length = Parameter.of("length", Length.class, "length of the conductor");
        return Calculation.named("protective-conductor", "Continuity of a protective conductor")
                .explained("The highest resistance that a test may show.")
                .takes(length).by("0.3 ohm up to 5 m, 0.1 ohm for each further 7.5 m begun, at most 1 ohm").validFor("circuits up to 16 A")
                .from(AcSources.PROTECTIVE_CONDUCTOR).answers(in -> Answer.of("highest resistance", ProtectiveConductor.highest(in.get(length)),
                        "ohm"));
    }

    private static Calculation insulation() {
        Parameter<Resistance> measured = Parameter.of("measured", Resistance.class, "insulation resistance as measured");
        Parameter<Temperature> winding = Parameter.of("temperature", Temperature.class, "temperature of the winding");
        return Calculation.named("insulation-at-40", "Insulation resistance of a winding at 40 degC")
                .explained("What a reading is worth at 40 degC, by both methods: which insulation it is decides.").takes(measured, winding)
                .by("thermoplastic R 0.5^((40 - t)/10); thermosetting R exp(-1245 (1/(t + 273) - 1/313))")
                .validFor("10 to 40 degC for both; refused outside").from(AcSources.INSULATION_HALVING)
                .answers(in -> Answer.of("thermoplastic", InsulationResistance.at40ByHalving(in.get(measured), in.get(winding)), "Mohm")
                        .and("thermosetting", InsulationResistance.at40Thermosetting(in.get(measured), in.get(winding)), "Mohm"));
    }
}
