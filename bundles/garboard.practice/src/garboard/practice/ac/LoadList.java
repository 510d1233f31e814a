// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__LOADS;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__CONDITION;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__DEMAND_FACTOR;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__EFFICIENCY;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__EXCLUSIVE_WITH;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__KIND;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__NAME;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__POWER;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__POWER_FACTOR;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.checks.Check;
import garboard.checks.FeaturePath;
import garboard.model.AcOutput;
import garboard.model.ElectricalLoad;
import garboard.model.LoadKind;
import garboard.physics.ac.ConnectedLoad;
import garboard.physics.ac.DemandSum;
import garboard.quantity.ApparentPower;
import garboard.quantity.Power;

/**
 * The load list by conditions of running: a load counts in each condition that it names (several are parted by semicolons), one that names
 * none counts in all. Of loads that never run together only those count that ask for the most.
 */
final class LoadList {

    private LoadList() {
    }

    /** What has to be entered for active power, and what else the caller asks for. */
    static FeaturePath[] inputs(EStructuralFeature... more) {
        return Stream.concat(Stream.of(path(AC_OUTPUT__LOADS, ELECTRICAL_LOAD__POWER), path(AC_OUTPUT__LOADS, ELECTRICAL_LOAD__DEMAND_FACTOR)),
            Stream.of(more).map(FeaturePath::path)).toArray(FeaturePath[]::new);
    }

    /** What is taken into account where it is entered. */
    static FeaturePath[] options() {
        return new FeaturePath[] { path(AC_OUTPUT__LOADS, ELECTRICAL_LOAD__EFFICIENCY), path(AC_OUTPUT__LOADS, ELECTRICAL_LOAD__CONDITION),
                path(AC_OUTPUT__LOADS, ELECTRICAL_LOAD__EXCLUSIVE_WITH), path(AC_OUTPUT__LOADS, ELECTRICAL_LOAD__NAME) };
    }

    /** Declares all that the sums of apparent power read; a resistive load has a power factor of 1. */
    static <S extends EObject> Check.Builder<S> apparentNeeded(Check.Builder<S> check) {
        return check.needs(inputs()).uses(options()).uses(path(AC_OUTPUT__LOADS, ELECTRICAL_LOAD__KIND))
            .needsWhen(s -> s.record().getAcOutput().getLoads().stream().anyMatch(LoadList::notResistive), path(AC_OUTPUT__LOADS)
                .where(ElectricalLoad.class, LoadList::notResistive).then(ELECTRICAL_LOAD__POWER_FACTOR));
    }

    private static boolean notResistive(ElectricalLoad load) {
        return load.getKind() != LoadKind.RESISTIVE;
    }

    /**
     * Loads that run together.
     *
     * @param name of the condition; empty where no load names any
     */
    record Running(String name, List<ElectricalLoad> loads) {

        Power demand() {
            return Power.of(loads.stream().mapToDouble(load -> LoadList.demand(load).si()).sum());
        }

        /** Active and reactive power summed apart. */
        ApparentPower apparent() {
            return DemandSum.of(loads.stream().map(LoadList::connected).toList()).apparent();
        }

        /** For example {@code in the condition "at anchor"}, as the beginning of a sentence. */
        String inWords() {
            return name.isEmpty() ? "" : "in the condition \"" + name + "\" ";
        }
    }

    /** All conditions, in the order in which they are named. */
    static List<Running> conditions(AcOutput output) {
        var names = new LinkedHashMap<String, String>();
        output.getLoads().forEach(load -> named(load).forEach(name -> names.putIfAbsent(key(name), name)));
        if (names.isEmpty()) {
            return List.of(new Running("", Exclusion.heaviest(output.getLoads())));
        }
        return names.entrySet().stream().map(entry -> new Running(entry.getValue(), Exclusion.heaviest(output.getLoads().stream()
            .filter(load -> named(load).isEmpty() || named(load).stream().anyMatch(name -> key(name).equals(entry.getKey()))).toList()))).toList();
    }

    /** The condition that asks for the most active power. */
    static Running busiest(AcOutput output) {
        return conditions(output).stream().max(Comparator.comparing(Running::demand)).orElseThrow();
    }

    /** The condition that asks for the least active power. */
    static Running lightest(AcOutput output) {
        return conditions(output).stream().min(Comparator.comparing(Running::demand)).orElseThrow();
    }

    /** What a load takes from the mains while it runs. Without an efficiency the entered power is what it draws. */
    static Power input(ElectricalLoad load) {
        return load.getEfficiency() == null ? load.getPower() : ConnectedLoad.inputOf(load.getPower(), load.getEfficiency());
    }

    /** Average active power. */
    static Power demand(ElectricalLoad load) {
        return ConnectedLoad.of(input(load)).withUseFactor(load.getDemandFactor()).demand();
    }

    static ConnectedLoad connected(ElectricalLoad load) {
        return running(load).withUseFactor(load.getDemandFactor());
    }

    /** A load while it runs, its demand factor left out. */
    static ConnectedLoad running(ElectricalLoad load) {
        return load.getPowerFactor() == null ? ConnectedLoad.of(input(load)) : ConnectedLoad.of(input(load)).withPowerFactor(load.getPowerFactor());
    }

    private static List<String> named(ElectricalLoad load) {
        return load.getCondition() == null ? List.of()
            : Stream.of(load.getCondition().split(";")).map(String::strip).filter(name -> !name.isEmpty()).toList();
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
