// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

/** Current that makes gas, in milliampere for each ampere-hour of rated capacity, by kind of cell and stage of charge. */
public enum GassingRate {
    /** EN 50272-2. */
    VENTED_FLOAT(5),
    /** EN 50272-2. */
    VENTED_BOOST(20),
    /** EN 50272-2. */
    VALVE_REGULATED_FLOAT(1),
    /** EN 50272-2. */
    VALVE_REGULATED_BOOST(8),
    /** EN 50272-3 prints 1 A per 100 Ah for valve-regulated traction cells at 2.4 V. */
    VALVE_REGULATED_BOOST_EN_50272_3(10);

    final double milliamperePerAmpereHour;

    GassingRate(double milliamperePerAmpereHour) {
        this.milliamperePerAmpereHour = milliamperePerAmpereHour;
    }
}
