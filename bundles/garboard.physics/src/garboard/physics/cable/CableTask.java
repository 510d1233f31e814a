// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import garboard.physics.Argument;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/**
 * What a pair of conductors has to do.
 *
 * @param current through both
 * @param loop length out plus length back
 * @param allowedDrop over the whole loop
 * @param conductor temperature of the copper while it carries the current
 */
public record CableTask(Current current, Length loop, Voltage allowedDrop, Temperature conductor) {

    public CableTask {
        Argument.positive("current", current);
        Argument.positive("loop length", loop);
        Argument.positive("allowed drop", allowedDrop);
    }
}
