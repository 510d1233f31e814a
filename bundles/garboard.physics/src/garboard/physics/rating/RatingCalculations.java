// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rating;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Parameter;
import garboard.quantity.AbsolutePressure;
import garboard.quantity.Length;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;

/** The calculations of ratings, by name. */
public final class RatingCalculations {

    private static final Parameter<Power> RATED = Parameter.of("rated", Power.class, "rated power");
    private static final Parameter<Temperature> AIR = Parameter.of("air", Temperature.class, "temperature of the air at the intake");
    private static final Parameter<Length> HEIGHT = Parameter.of("height", Length.class, "height above the sea").orElse("0 m");

    private RatingCalculations() {
    }

    public static List<Calculation> all() {
        return List.of(iso3046(), simpleRules(), standardPressure(), standardHeight(), hotCompartment(), averagePower(), overload());
    }

    private static Calculation iso3046() {
        Parameter<EngineKind> engine = Parameter.choice("engine", EngineKind.class, "kind of engine");
        Parameter<AbsolutePressure> barometer = Parameter.of("barometer", AbsolutePressure.class, "barometric pressure").orElse("100 kPa");
        Parameter<Ratio> humidity = Parameter.of("humidity", Ratio.class, "relative humidity").orElse("60 %");
        Parameter<Temperature> coolant = Parameter.of("charge-coolant", Temperature.class, "temperature of the charge-air coolant").orElse("25 degC");
        Parameter<Ratio> efficiency = Parameter.of("mechanical-efficiency", Ratio.class, "mechanical efficiency").orElse("0.8");
        return Calculation.named("derating-iso3046", "Power left at a site by ISO 3046-1")
                .explained("What heat, height and humidity leave of the engine's power.")
                .takes(engine, AIR, barometer, humidity, coolant, efficiency, RATED)
                .by("a = k - 0.7 (1 - k)(1/eta - 1); k = ((px - A vx)/(pr - A vr))^m (Tr/Tx)^n (Tcr/Tcx)^s")
                .validFor("50 to 110 kPa, -45 to 60 degC; refused outside")
                .from(RatingSources.ISO_3046).answers(in -> {
                    var site = new SiteConditions(in.get(barometer), in.get(AIR), in.get(humidity), in.get(coolant));
                    var factors = Iso3046Derating.factors(in.get(engine), site, in.get(efficiency));
                    return Answer.of("power left", factors.brakePower(), "%")
                            .and("power", Power.of(in.get(RATED).si() * factors.brakePower().si()), "kW", "hp")
                            .and("fuel consumption", factors.fuelConsumption(), "%")
                            .warning("formula and exponents unverified: the set's own curve goes before it")
                            .warningIf(factors.brakePower().si() > 1, "above 100 %: the rating is still not to be passed");
                });
    }

    private static Calculation simpleRules() {
        Parameter<SimpleDerating.TextbookEngine> engine = Parameter.choice("engine", SimpleDerating.TextbookEngine.class, "kind of engine");
        return Calculation.named("derating-simple", "Power left by simple rules")
                .explained("Three rules of thumb for height and heat side by side: choose one, never add two.").takes(engine, AIR, HEIGHT)
                .by("textbook 3 % per 1000 ft above 500 ft, 1 % per 10 or 5 degF above 85 degF; US Army 1.3 % per 100 m above 1219 m, 3 % per 10 K"
                        + " above 35 degC; alternator 3 % per 500 m above 1000 m, 3 % per 5 K above 40 degC")
                .validFor("0 to 4000 m, -45 to 60 degC; refused outside").from(RatingSources.AGRICULTURAL)
                .answers(in -> Answer.of("textbook, temperature", SimpleDerating.textbookTemperature(in.get(engine), in.get(AIR)), "%")
                        .and("textbook, height", SimpleDerating.textbookHeight(in.get(engine), in.get(HEIGHT)), "%")
                        .and("US Army, both", SimpleDerating.usArmySmallSet(in.get(HEIGHT), in.get(AIR)), "%")
                        .and("alternator, both", SimpleDerating.alternator(in.get(HEIGHT), in.get(AIR)), "%"));
    }

    private static Calculation standardPressure() {
        Parameter<Length> height = Parameter.of("height", Length.class, "height above the sea");
        return Calculation.named("standard-pressure", "Standard air pressure at a height").explained("The barometer to expect at a height.")
                .takes(height)
                .by("101.325 kPa (1 - 0.0065 h / 288.15)^5.25588").validFor("-500 to 11 000 m; refused outside")
                .from(RatingSources.STANDARD_ATMOSPHERE)
                .answers(in -> Answer.of("pressure", Atmosphere.standardPressure(in.get(height)), "kPa", "inHg"));
    }

    private static Calculation standardHeight() {
        Parameter<AbsolutePressure> barometer = Parameter.of("barometer", AbsolutePressure.class, "barometric pressure");
        return Calculation.named("standard-height", "Height at which the standard air has a pressure")
                .explained("The height that a barometer stands for; weather moves it by some hundred metres.").takes(barometer)
                .by("288.15 / 0.0065 (1 - (p / 101.325 kPa)^(1/5.25588))").validFor("22.7 to 107.4 kPa; refused outside")
                .from(RatingSources.STANDARD_ATMOSPHERE)
                .answers(in -> Answer.of("height", Atmosphere.standardHeight(in.get(barometer)), "m", "ft"));
    }

    private static Calculation hotCompartment() {
        Parameter<GeneratorAmbient> builtFor = Parameter.choice("built-for", GeneratorAmbient.class,
                "ambient temperature the generator is built for");
        Parameter<Temperature> space = Parameter.of("space", Temperature.class, "hottest temperature of the space");
        return Calculation.named("hot-compartment", "Generator in a hot compartment")
                .explained("What 46 CFR leaves of a generator's power in a hot space.")
                .takes(builtFor, space, RATED).by("full power up to the ambient it is built for, else 80 %")
                .validFor("spaces up to 50 degC; refused above")
                .from(RatingSources.HOT_COMPARTMENT).answers(in -> {
                    Ratio share = in.get(builtFor).shareIn(in.get(space));
                    return Answer.of("power", Power.of(in.get(RATED).si() * share.si()), "kW").and("power left", share, "%");
                });
    }

    private static Calculation averagePower() {
        Parameter<RatingCategory> category = Parameter.choice("category", RatingCategory.class, "category of the rating").orElse("prp");
        List<Parameter<Optional<Power>>> powers = new ArrayList<>();
        List<Parameter<Optional<TimeSpan>>> times = new ArrayList<>();
        for (int i = 1; i <= 4; i++) {
            powers.add(Parameter.of("power-" + i, Power.class, "power of spell " + i).optional());
            times.add(Parameter.of("time-" + i, TimeSpan.class, "length of spell " + i).optional());
        }
        return Calculation.named("average-power", "Average power over a day")
                .explained("The average of up to four spells of running, with less than 30 % counted as 30 %, against the category's limit.")
                .takes(RATED, powers.get(0), times.get(0), powers.get(1), times.get(1), powers.get(2), times.get(2), powers.get(3), times.get(3),
                        category)
                .by("sum(P t) / sum(t), P at least 30 % of the rating").validFor("spells of 24 h in all; standstill stays out")
                .from(RatingSources.CATEGORIES)
                .answers(in -> {
                    List<AveragePower.Spell> spells = new ArrayList<>();
                    for (int i = 0; i < powers.size(); i++) {
                        Optional<TimeSpan> time = in.get(times.get(i));
                        in.get(powers.get(i)).flatMap(power -> time.map(spell -> new AveragePower.Spell(power, spell))).ifPresent(spells::add);
                    }
                    Power average = AveragePower.withFloor(spells, in.get(RATED));
                    Power highest = in.get(category).highestAverage(in.get(RATED));
                    return Answer.of("average", average, "kW").and("plain average", AveragePower.plain(spells), "kW").and("limit", highest, "kW")
                            .warningIf(average.isMoreThan(highest), "more than the category allows");
                });
    }

    private static Calculation overload() {
        Parameter<RatingCategory> category = Parameter.choice("category", RatingCategory.class, "category of the rating");
        return Calculation.named("overload", "Permitted overload").explained("What a category allows above its rating, where the maker declares it.")
                .takes(category, RATED).by("prime power: 110 % for 1 h in 12 h; others: none")
                .validFor("only where declared; never in the trial of a standby set")
                .from(RatingSources.CATEGORIES).answers(in -> in.get(category).declaredOverload(in.get(RATED))
                        .map(power -> Answer.of("overload", power, "kW").and("for", "1 h in 12 h, only where declared"))
                        .orElseGet(() -> Answer.of("overload", "none")));
    }
}
