// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.Frequency;
import garboard.quantity.Ratio;

/**
 * Two steady frequencies of a set at the same governor setting.
 *
 * @param noLoad without load
 * @param atDeclaredPower at the declared power
 */
public record SteadyFrequencies(Frequency noLoad, Frequency atDeclaredPower) {

    public SteadyFrequencies {
        Argument.positive("frequency at no load", noLoad);
        Argument.positive("frequency at declared power", atDeclaredPower);
    }

    /** First step: the frequency without load. */
    public static NoLoad noLoad(Frequency frequency) {
        return new NoLoad(frequency);
    }

    /** (f no load - f declared) / f declared ({@link AcSources#DROOP}); negative where the frequency rises with load. */
    public Ratio droop() {
        return Ratio.of((noLoad.si() - atDeclaredPower.si()) / atDeclaredPower.si());
    }

    /** Waits for the second frequency, so that the two cannot be swapped unseen. */
    public record NoLoad(Frequency frequency) {

        public SteadyFrequencies atDeclaredPower(Frequency loaded) {
            return new SteadyFrequencies(frequency, loaded);
        }
    }
}
