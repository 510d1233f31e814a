// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_SIZE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SYSTEM_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CABLES;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Condition;
import garboard.checks.FeaturePath;
import garboard.checks.Remedy;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.GeneratorSet;
import garboard.model.MakerLimits;
import garboard.model.StartingBattery;
import garboard.physics.cable.ConductorSeries;
import garboard.physics.cable.ConductorSize;
import garboard.quantity.Area;
import garboard.quantity.Resistance;
import garboard.quantity.Voltage;

/** The conductors from the battery's posts to the starter and back, in series, at 20 degC as SAE J541 has it. */
final class CrankingCircuit {

    private static final Voltage LIGHTEST = Voltage.of(10, "V");
    private static final Voltage TWELVE_UP_TO = Voltage.of(16, "V");
    private static final Voltage HEAVIEST = Voltage.of(36, "V");

    private final List<CableRun> runs;

    private CrankingCircuit(List<CableRun> runs) {
        this.runs = runs;
    }

    /** The circuit of a record in which everything that it reads is entered. */
    static CrankingCircuit of(StartingBattery battery) {
        return new CrankingCircuit(battery.getCables().stream().filter(CrankingCircuit::inSeries).toList());
    }

    /** Outgoing conductors; a place to go on from. */
    static FeaturePath positives() {
        return path(STARTING_BATTERY__CABLES).where(CableRun.class, run -> run.getFunction() == CableFunction.CRANKING_POSITIVE);
    }

    /** Returning conductors; a place to go on from. */
    static FeaturePath negatives() {
        return path(STARTING_BATTERY__CABLES).where(CableRun.class, run -> run.getFunction() == CableFunction.CRANKING_NEGATIVE);
    }

    /** Both; a place to go on from. */
    static FeaturePath conductors() {
        return path(STARTING_BATTERY__CABLES).where(CableRun.class, CrankingCircuit::inSeries);
    }

    /** Metric conductors of both; a place to go on from. */
    static FeaturePath metricConductors() {
        return path(STARTING_BATTERY__CABLES).where(CableRun.class, run -> inSeries(run) && CableRuns.isMetric(run));
    }

    static boolean hasMetricConductors(StartingBattery battery) {
        return battery.getCables().stream().anyMatch(run -> inSeries(run) && CableRuns.isMetric(run));
    }

    /** The sizes of all cranking cables can be read; one check of its own tells where one cannot. */
    static Condition<StartingBattery> readableSizes() {
        return Condition.<StartingBattery>when("where the sizes of the cranking cables can be read")
            .known(conductors().then(CABLE_RUN__CONDUCTOR_SIZE)).test(
                s -> s.subject().getCables().stream().filter(CrankingCircuit::inSeries).allMatch(CableRuns::hasReadableSize),
                "the size of a cranking cable cannot be read; write it as 2/0 AWG or 70 mm2");
    }

    private static boolean inSeries(CableRun run) {
        return run.getFunction() == CableFunction.CRANKING_POSITIVE || run.getFunction() == CableFunction.CRANKING_NEGATIVE;
    }

    /** SAE J541 has figures for 12 V and for 24 to 32 V. */
    static Condition<EObject> listedVoltage() {
        return Condition.when("sets that start on 12 V or on 24 to 32 V").known(path(GENERATOR_SET__SYSTEM_VOLTAGE)).test(
            s -> !s.set().getSystemVoltage().isLessThan(LIGHTEST) && !s.set().getSystemVoltage().isMoreThan(HEAVIEST),
            "SAE J541 has figures for 12 V and for 24 to 32 V only");
    }

    /** Rules of thumb have nothing to add once the maker has named a resistance. */
    static Condition<EObject> makerNamesNoResistance() {
        return Condition.when("where the maker names no resistance of his own").known()
            .uses(path(MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE))
            .test(s -> s.maker(MakerLimits::getMaximumCrankingCircuitResistance).isEmpty(), "the maker's own resistance decides");
    }

    /** Half volts and fifths of a volt are rules of thumb for 12 V. */
    static Condition<EObject> startsOn12V() {
        return Condition.when("sets that start on 12 V").known(path(GENERATOR_SET__SYSTEM_VOLTAGE))
            .test(s -> startsOn12V(s.set()), "the rule of thumb is for 12 V");
    }

    static boolean startsOn12V(GeneratorSet set) {
        return !set.getSystemVoltage().isMoreThan(TWELVE_UP_TO);
    }

    /** The sizes of its conductors, which have to be readable. */
    static Stream<ConductorSize> sizes(StartingBattery battery) {
        return battery.getCables().stream().filter(CrankingCircuit::inSeries).map(CableRuns::size);
    }

    /** Of the copper alone; joints come on top. */
    Resistance resistance() {
        return resistanceWithAtLeast(Area.of(0));
    }

    /** The same with every conductor of less than this area replaced by the next of its series. */
    private Resistance resistanceWithAtLeast(Area area) {
        return Resistance.of(runs.stream()
            .mapToDouble(run -> CableRuns.resistanceAt20(atLeast(area, run).orElseGet(() -> CableRuns.size(run)), run).si() * run.getLength().si())
            .sum());
    }

    private static Optional<ConductorSize> atLeast(Area area, CableRun run) {
        ConductorSize now = CableRuns.size(run);
        return now.area().isLessThan(area) ? ConductorSeries.smallest(CableRuns.series(now), area) : Optional.of(now);
    }

    /** The thinnest conductors that keep a resistance, as a remedy; nothing where the largest fall short. */
    Optional<Remedy> keeping(Resistance most) {
        return Stream.concat(ConductorSeries.IEC.stream(), ConductorSeries.AWG.stream()).map(ConductorSize::area).sorted()
            .filter(area -> runs.stream().allMatch(run -> atLeast(area, run).isPresent()))
            .filter(area -> !resistanceWithAtLeast(area).isMoreThan(most)).findFirst().map(this::replaceThinner);
    }

    private Remedy replaceThinner(Area area) {
        List<CableRun> thin = runs.stream().filter(run -> CableRuns.size(run).area().isLessThan(area)).toList();
        String sizes = thin.stream().map(run -> atLeast(area, run).orElseThrow().toString()).distinct().collect(Collectors.joining(" or "));
        Remedy remedy = Remedy.of("Lay the thinner cranking cables in " + sizes + ", or bring the battery closer to the starter");
        for (CableRun run : thin) {
            remedy = remedy.setting(run, CABLE_RUN__CONDUCTOR_SIZE, atLeast(area, run).orElseThrow().toString());
        }
        return remedy;
    }
}
