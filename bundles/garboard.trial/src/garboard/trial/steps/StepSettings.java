// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;

/**
 * What counts as a step of the load and as a steady load. COMMON PRACTICE but for the window: trials go in quarters of the rated power and
 * dwell for minutes; a window of 30 s is the short-term window of generator-set acceptance tests (QUOTED).
 *
 * @param leastStep   smallest step, as a share of the highest load
 * @param leastDwell  how long a load must stay to be a step of the trial
 * @param band        half width within which the load is steady, as a share of the highest load
 * @param leastWindow shortest steady window
 */
public record StepSettings(Ratio leastStep, TimeSpan leastDwell, Ratio band, TimeSpan leastWindow) {

    /** 5 % of the highest load, a minute, 3 %, 30 s. */
    public static final StepSettings USUAL = new StepSettings(Ratio.of(0.05), TimeSpan.of(60), Ratio.of(0.03), TimeSpan.of(30));

    public StepSettings {
        for (double value : new double[] {leastStep.si(), leastDwell.si(), band.si(), leastWindow.si()}) {
            if (value <= 0) {
                throw new IllegalArgumentException("smallest step " + leastStep + ", dwell " + leastDwell + ", band " + band + ", window "
                    + leastWindow + ": all must be more than 0");
            }
        }
    }
}
