// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.BATTERY_BLOCK__RESTED_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCKS;

import java.util.List;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.BatteryBlock;
import garboard.model.StartingBattery;
import garboard.physics.battery.OpenCircuitVoltage;
import garboard.practice.Figures;
import garboard.quantity.Voltage;

/** The blocks of a string rest at nearly the same voltage; one that lags behind is the weak one. */
final class BlocksAgree {

    private static final Voltage MOST = Voltage.of(0.1, "V");

    private BlocksAgree() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-BLOCK-SPREAD", StartingBattery.class)
            .title("Blocks in series rest at the same voltage")
            .why("The charger sees the sum only: it overcharges the good block and never fills the weak one.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("at most 0.1 V between the highest and the lowest block")
            .applies(BatteryConditions.blocksInSeries())
            .needs(path(STARTING_BATTERY__BLOCKS, BATTERY_BLOCK__RESTED_VOLTAGE))
            .needsWhen(BlocksAgree::someAreNotListed, path(STARTING_BATTERY__BLOCKS).where(BatteryBlock.class, block -> false))
            .holds(BlocksAgree::compare)
            .remedy("Charge each block by itself, let them rest and read again; replace the one that stays behind")
            .build();
    }

    private static boolean someAreNotListed(Situation<StartingBattery> s) {
        return s.subject().getBlocks().size() < s.subject().getBlocksInSeries();
    }

    private static Comparison compare(Situation<StartingBattery> s) {
        List<Voltage> rested = s.subject().getBlocks().stream().map(BatteryBlock::getRestedVoltage).toList();
        Voltage spread = OpenCircuitVoltage.blockSpread(rested);
        return Comparison.atMost("the blocks differ by " + Figures.both(spread), spread, Limit.of(MOST, "common practice"));
    }
}
