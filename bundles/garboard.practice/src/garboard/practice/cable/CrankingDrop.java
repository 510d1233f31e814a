// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CRANKING_VOLTAGE_AT_STARTER;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.StartingBattery;
import garboard.practice.Figures;
import garboard.quantity.Voltage;

/** What the circuit loses between posts and starter while it cranks, as measured. */
final class CrankingDrop {

    private CrankingDrop() {
    }

    /** Everything but limit and authority. */
    static Check.Builder<StartingBattery> check(String id) {
        return Check.check(id, StartingBattery.class)
            .gravity(Gravity.DEFECT)
            .why("A drop beyond that of the copper sits in a bad joint, which grows hot and fails on a cold morning.")
            .needs(STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS, STARTING_BATTERY__CRANKING_VOLTAGE_AT_STARTER);
    }

    static Comparison compare(StartingBattery battery, Limit<Voltage> limit) {
        Voltage posts = battery.getCrankingVoltageAtPosts();
        Voltage starter = battery.getCrankingVoltageAtStarter();
        String readings = Figures.both(posts) + " at the posts and " + Figures.both(starter) + " at the starter";
        if (starter.isMoreThan(posts)) {
            return Comparison.holds(readings + " cannot both be right: read them while it cranks", false);
        }
        Voltage drop = Voltage.of(posts.si() - starter.si());
        double halfWidthV = Math.hypot(posts.accuracySi().orElse(0), starter.accuracySi().orElse(0));
        Voltage measured = halfWidthV > 0 ? drop.withAccuracy(Voltage.of(halfWidthV)) : drop;
        return Comparison.atMost(readings + ": the circuit takes " + Figures.both(drop), measured, limit);
    }
}
