// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import java.util.List;
import java.util.stream.Stream;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Parameter;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

/** The calculations of the starting battery, by name. */
public final class BatteryCalculations {

    private static final Parameter<Integer> BLOCKS = Parameter.wholeNumber("blocks", "12 V blocks in series").orElse("1");
    private static final Parameter<Temperature> BATTERY = Parameter.of("temperature", Temperature.class, "temperature of the battery");
    private static final Parameter<Current> CRANKING = Parameter.of("cranking-current", Current.class, "current while cranking");
    private static final Parameter<Voltage> OPEN_CIRCUIT = Parameter.of("open-circuit", Voltage.class, "rested voltage of a 12 V block")
            .orElse("12.7 V");

    private BatteryCalculations() {
    }

    public static List<Calculation> all() {
        return Stream.concat(Stream.of(stateOfCharge(), blockSpread(), hydrometer(), floodedVoltage(), voltageAtPosts(), coldCrankingNeeded(), bank(),
                coldWeather(), loadTest(), startingCharge()), ChargingCalculations.all().stream()).toList();
    }

    private static Calculation stateOfCharge() {
        Parameter<OpenCircuitCurve> type = Parameter.choice("type", OpenCircuitCurve.class, "kind of battery");
        Parameter<Voltage> rested = Parameter.of("rested-voltage", Voltage.class, "voltage of the string after hours without load or charge");
        return Calculation.named("battery-state-of-charge", "State of charge from the rested voltage")
                .explained("How full a rested lead-acid battery is, by the voltage at its posts.").takes(type, rested, BLOCKS)
                .by("straight lines through the voltage table of the kind of battery").validFor("10.5 to 13.2 V for each 12 V block; refused outside")
                .from(BatterySources.OPEN_CIRCUIT_TABLE).answers(in -> Answer.of("state of charge",
                        OpenCircuitVoltage.stateOfCharge(in.get(type), in.get(rested), in.get(BLOCKS)), "%"));
    }

    private static Calculation blockSpread() {
        Parameter<Voltage> highest = Parameter.of("highest", Voltage.class, "highest block of the string");
        Parameter<Voltage> lowest = Parameter.of("lowest", Voltage.class, "lowest block of the string");
        return Calculation.named("battery-block-spread", "Spread over the blocks of a string")
                .explained("Whether one block of a series string is weaker than the others.").takes(highest, lowest).by("highest less lowest")
                .validFor("rested blocks of one string").from(BatterySources.BANK_RULES).answers(in -> {
                    Voltage spread = OpenCircuitVoltage.blockSpread(List.of(in.get(highest), in.get(lowest)));
                    return Answer.of("spread", spread, "V").warningIf(spread.si() > 0.1, "common practice: more than 0.1 V is a weak block");
                });
    }

    private static Calculation hydrometer() {
        Parameter<Ratio> reading = Parameter.of("reading", Ratio.class, "specific gravity as read");
        Parameter<Temperature> electrolyte = Parameter.of("electrolyte", Temperature.class, "temperature of the electrolyte");
        return Calculation.named("hydrometer-correction", "Hydrometer reading at 80 degF")
                .explained("The specific gravity that the cell would show at 26.7 degC (80 degF).").takes(reading, electrolyte)
                .by("SG + 0.004 per 10 degF above 80 degF").validFor("1.000 to 1.400, -30 to 60 degC; refused outside")
                .from(BatterySources.HYDROMETER_CORRECTION)
                .answers(in -> Answer.of("specific gravity", Hydrometer.correctedTo80F(in.get(reading), in.get(electrolyte)), "1"));
    }

    private static Calculation floodedVoltage() {
        Parameter<Ratio> gravity = Parameter.of("gravity", Ratio.class, "specific gravity of the electrolyte");
        Parameter<Integer> cells = Parameter.wholeNumber("cells", "cells in series").orElse("6");
        return Calculation.named("flooded-open-circuit", "Open-circuit voltage of flooded cells")
                .explained("The rested voltage that goes with a specific gravity.").takes(gravity, cells).by("n (SG + 0.84) V")
                .validFor("1.000 to 1.400 at about 25 degC; refused outside").from(BatterySources.FLOODED_EMF)
                .answers(in -> Answer.of("open-circuit voltage", Hydrometer.floodedVoltage(in.get(gravity), in.get(cells)), "V"));
    }

    private static Calculation voltageAtPosts() {
        Parameter<Current> coldCranking = Parameter.of("cold-cranking", Current.class, "cold-cranking current by SAE J537");
        return Calculation.named("battery-cranking-voltage", "Voltage at the posts while cranking")
                .explained("How far a battery sags under the starter, from its cold-cranking current.")
                .takes(coldCranking, CRANKING, OPEN_CIRCUIT, BLOCKS)
                .by("n (Voc - I Ri), Ri = (Voc - 7.2 V) / CCA").validFor("up to the cold-cranking current; low by intent above -18 degC")
                .from(BatterySources.COLD_CRANKING_LINE).answers(in -> {
                    StarterBattery battery = new StarterBattery(in.get(OPEN_CIRCUIT), in.get(coldCranking));
                    return Answer.of("voltage at the posts", battery.atPosts(in.get(CRANKING), in.get(BLOCKS)), "V")
                            .and("internal resistance of a block", battery.internalResistance(), "mohm");
                });
    }

    private static Calculation coldCrankingNeeded() {
        Parameter<Voltage> floor = Parameter.of("floor", Voltage.class, "least voltage of a 12 V block while cranking").orElse("9.6 V");
        return Calculation.named("cold-cranking-needed", "Cold-cranking current that a starter asks for")
                .explained("The least cold-cranking current of each block where the set's manual gives none.").takes(CRANKING, OPEN_CIRCUIT, floor)
                .by("I (Voc - 7.2 V) / (Voc - Vmin)").validFor("a floor from 7.2 V to less than the rested voltage")
                .from(BatterySources.COLD_CRANKING_LINE).answers(in -> Answer.of("cold-cranking current",
                        CrankingDemand.of(in.get(CRANKING), in.get(OPEN_CIRCUIT)).withFloor(in.get(floor)).coldCrankingNeeded(), "A"));
    }

    private static Calculation bank() {
        Parameter<Voltage> nominal = Parameter.of("block-voltage", Voltage.class, "nominal voltage of one block").orElse("12 V");
        Parameter<Charge> capacity = Parameter.of("block-capacity", Charge.class, "rated capacity of one block");
        Parameter<Current> coldCranking = Parameter.of("block-cold-cranking", Current.class, "cold-cranking current of one block");
        Parameter<Integer> series = Parameter.wholeNumber("series", "blocks in one string").orElse("1");
        Parameter<Integer> parallel = Parameter.wholeNumber("parallel", "strings beside each other").orElse("1");
        return Calculation.named("battery-bank", "Bank of equal batteries").explained("What blocks in series and parallel add up to.")
                .takes(nominal, capacity, coldCranking, series, parallel).by("series: volts add; parallel: Ah and CCA add; energy = U Q")
                .validFor("blocks of the same kind, age and size").from(BatterySources.BANK_RULES).answers(in -> {
                    BatteryBank bank = BatteryBank.of(new BatteryBlock(in.get(nominal), in.get(capacity), in.get(coldCranking)))
                            .withBlocksInSeries(in.get(series)).withStringsInParallel(in.get(parallel));
                    return Answer.of("voltage", bank.nominal(), "V").and("capacity", bank.capacity(), "Ah")
                            .and("cold-cranking current", bank.coldCranking(), "A").and("energy", bank.energy(), "kWh");
                });
    }

    private static Calculation coldWeather() {
        return Calculation.named("battery-cold-weather", "Battery and engine in the cold")
                .explained("What the cold leaves of the battery and adds to the engine's demand, against 27 degC.").takes(BATTERY)
                .by("straight lines through the table").validFor("-29 to 27 degC; refused outside; not for cold-cranking figures")
                .from(BatterySources.COLD_WEATHER).answers(in -> Answer.of("demand over output", ColdWeather.demandOverOutput(in.get(BATTERY)), "1")
                        .and("battery output", ColdWeather.batteryOutput(in.get(BATTERY)), "%")
                        .and("engine demand", ColdWeather.engineDemand(in.get(BATTERY)), "%"));
    }

    private static Calculation loadTest() {
        return Calculation.named("battery-load-test", "Load test of a starting battery")
                .explained("The least voltage after 15 s at half the cold-cranking current.").takes(BATTERY, BLOCKS)
                .by("straight lines through the table")
                .validFor("-18 to 50 degC, above 21 degC the figure of 21 degC; refused outside").from(BatterySources.LOAD_TEST)
                .answers(in -> Answer.of("least voltage", LoadTest.leastVoltage(in.get(BATTERY), in.get(BLOCKS)), "V"));
    }

    private static Calculation startingCharge() {
        Parameter<Integer> starts = Parameter.wholeNumber("starts", "starts in a row").orElse("6");
        Parameter<TimeSpan> each = Parameter.of("crank-time", TimeSpan.class, "how long each cranks").orElse("10 s");
        Parameter<Voltage> voltage = Parameter.of("cranking-voltage", Voltage.class, "voltage of the bank while cranking").orElse("10 V");
        Parameter<Ratio> share = Parameter.of("share", Ratio.class, "share of the capacity they may take").orElse("20 %");
        return Calculation.named("starting-charge", "Charge that a series of starts takes")
                .explained("Ampere-hours for starts in a row, and the capacity that stands behind them.")
                .takes(CRANKING, starts, each, voltage, share)
                .by("Q = n t I; capacity = Q / share; energy = U I t").validFor("currents and times above 0").from(BatterySources.STARTING_CHARGE)
                .answers(in -> {
                    StartSeries series = new StartSeries(in.get(starts), in.get(each), in.get(CRANKING));
                    return Answer.of("charge", series.charge(), "Ah").and("capacity needed", series.capacityNeeded(in.get(share)), "Ah")
                            .and("energy per start", series.energyPerStart(in.get(voltage)), "kJ", "kWh");
                });
    }
}
