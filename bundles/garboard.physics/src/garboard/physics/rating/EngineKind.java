// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rating;

import garboard.physics.reference.ReferenceTable;

/** Kinds of engine by factor and exponents of the power adjustment ({@link RatingSources#ISO_3046}). */
public enum EngineKind {
    DIESEL_NATURALLY_ASPIRATED_AIR_LIMITED, DIESEL_NATURALLY_ASPIRATED_THERMALLY_LIMITED, DIESEL_TURBOCHARGED, DIESEL_TURBOCHARGED_CHARGE_AIR_COOLED,
    SPARK_IGNITION_NATURALLY_ASPIRATED, GAS_NATURALLY_ASPIRATED, GAS_TURBOCHARGED_CHARGE_AIR_COOLED;

    /** Counts the humidity in (1) or leaves it out (0). */
    final double humidityFactor;
    final double pressureExponent;
    final double airTemperatureExponent;
    final double coolantTemperatureExponent;

    EngineKind() {
        ReferenceTable table = ReferenceTable.load("engine-derating-iso3046.csv");
        int row = table.rowOf("kind", name()).orElseThrow();
        humidityFactor = table.figure(row, "a").orElseThrow();
        pressureExponent = table.figure(row, "m").orElseThrow();
        airTemperatureExponent = table.figure(row, "n").orElseThrow();
        coolantTemperatureExponent = table.figure(row, "s").orElseThrow();
    }
}
