// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

/**
 * Traits of a set that shift class limits.
 *
 * @param sparkIgnition gasoline or gas engine: a larger drop of frequency is allowed (from memory)
 * @param upTo10Kilowatt small set: class G1 allows 10 % of steady voltage deviation
 */
public record SetTraits(boolean sparkIgnition, boolean upTo10Kilowatt) {

    /** A diesel set above 10 kW. */
    public static SetTraits ordinary() {
        return new SetTraits(false, false);
    }

    public SetTraits withSparkIgnition() {
        return new SetTraits(true, upTo10Kilowatt);
    }

    public SetTraits withUpTo10Kilowatt() {
        return new SetTraits(sparkIgnition, true);
    }
}
