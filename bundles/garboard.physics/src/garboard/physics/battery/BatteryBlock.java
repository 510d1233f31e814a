// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.Argument;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Voltage;

/**
 * One battery as it stands in the box.
 *
 * @param nominal 6, 8 or 12 V as a rule
 * @param capacity rated ampere-hours
 * @param coldCranking cold-cranking current by SAE J537
 */
public record BatteryBlock(Voltage nominal, Charge capacity, Current coldCranking) {

    public BatteryBlock {
        Argument.positive("nominal voltage", nominal);
        Argument.positive("capacity", capacity);
        Argument.positive("cold-cranking current", coldCranking);
    }
}
