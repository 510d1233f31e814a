// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCKS_IN_SERIES;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CHEMISTRY;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CRANKING_RATING_DEFINITION;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__EMERGENCY_SOURCE;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__ISOLATING_SWITCH;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__STRINGS_IN_PARALLEL;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Condition;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.BatteryChemistry;
import garboard.model.CrankingRatingDefinition;
import garboard.model.StartingBattery;
import garboard.practice.Figures;
import garboard.quantity.Voltage;

/** When checks of the starting battery apply. */
final class BatteryConditions {

    /** Above this a 12 V block is being charged, or was a moment ago: the full one of the highest kind rests at 12.85 V. */
    static final Voltage HIGHEST_RESTED = Voltage.of(13.2, "V");

    private BatteryConditions() {
    }

    /** Figures of voltage and gas are those of lead-acid cells. */
    static Condition<EObject> leadAcid() {
        return Condition.when("lead-acid batteries: flooded, AGM, gel").known(path(STARTING_BATTERY__CHEMISTRY)).test(
            s -> battery(s).getChemistry() != BatteryChemistry.LITHIUM_IRON_PHOSPHATE,
            "the battery is not a lead-acid one; its maker and its management system set the figures");
    }

    /** Only cells with free electrolyte can be measured with a hydrometer. */
    static Condition<EObject> flooded() {
        return Condition.when("flooded lead-acid batteries").known(path(STARTING_BATTERY__CHEMISTRY)).test(
            s -> battery(s).getChemistry() == BatteryChemistry.FLOODED_LEAD_ACID, "the battery has no free electrolyte to measure");
    }

    /** There is more than one block, in series or in parallel. */
    static Condition<EObject> severalBlocks() {
        return Condition.when("banks of several blocks")
            .known(path(STARTING_BATTERY__BLOCKS_IN_SERIES), path(STARTING_BATTERY__STRINGS_IN_PARALLEL))
            .test(s -> Bank.blocks(battery(s)) > 1, "the battery is a single block");
    }

    /** Blocks stand in series, so that one weak one spoils the string. */
    static Condition<EObject> blocksInSeries() {
        return Condition.when("blocks in series").known(path(STARTING_BATTERY__BLOCKS_IN_SERIES))
            .test(s -> battery(s).getBlocksInSeries() > 1, "no blocks stand in series");
    }

    /** The label gives the current that SAE J537 defines; no other figure can be reckoned with or converted into it. */
    static Condition<EObject> ratedBySaeJ537() {
        return Condition.when("batteries with a cold-cranking current by SAE J537").known(path(STARTING_BATTERY__CRANKING_RATING_DEFINITION))
            .test(s -> battery(s).getCrankingRatingDefinition() == CrankingRatingDefinition.CCA_SAE_J537,
                "the label's current is by another test than SAE J537, and the two must not be converted");
    }

    /** There is a switch that takes the battery off. */
    static Condition<EObject> isolatingSwitchFitted() {
        return Condition.when("where an isolating switch is fitted").known(path(STARTING_BATTERY__ISOLATING_SWITCH))
            .test(s -> battery(s).getIsolatingSwitch() == Answer.YES, "no isolating switch is fitted");
    }

    /** The set is the source of power in an emergency. */
    static Condition<EObject> emergencySource() {
        return Condition.when("sets that are the emergency source of power").known(path(STARTING_BATTERY__EMERGENCY_SOURCE))
            .test(s -> battery(s).getEmergencySource() == Answer.YES, "the set is not the emergency source of power");
    }

    /** Whether a voltage can be that of a rested battery; if not, it says nothing of the charge. */
    static boolean canBeRested(StartingBattery battery, Voltage bank) {
        return !Bank.inBlock(battery, bank).isMoreThan(HIGHEST_RESTED);
    }

    /** What is wrong with a voltage that {@link #canBeRested} refuses. */
    static String notRested(Voltage bank) {
        return "the battery shows " + Figures.both(bank)
            + ", more than any lead-acid battery at rest: it is being charged, carries surface charge, or the number of blocks is wrong";
    }

    static StartingBattery battery(Situation<? extends EObject> s) {
        return s.record().getStartingBattery();
    }
}
