// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rating;

import garboard.physics.Source;
import garboard.physics.Status;

/** Where the figures of this package come from. */
public final class RatingSources {

    public static final Source ISO_3046 = new Source("ISO 3046-1 power adjustment", Status.FROM_MEMORY,
            "formula and exponents unverified; the set's own curve goes before it");
    public static final Source STANDARD_ATMOSPHERE = new Source("ISO 2533 (ICAO) standard atmosphere: 101.325 kPa (1 - 0.0065 h / 288.15)^5.25588",
            Status.FROM_MEMORY, "");
    public static final Source SATURATION = new Source("Magnus form: 0.6112 kPa exp(17.62 t / (243.12 + t))", Status.FROM_MEMORY,
            "within 0.6 % of steam tables");
    public static final Source AGRICULTURAL = new Source(
            "agricultural-engineering textbook: 3 % per 1000 ft above 500 ft; 1 % per 10 degF (spark ignition) or 5 degF (diesel) above 85 degF",
            Status.RETRIEVED, "turbocharged engines: none; choose one rule, never add two");
    public static final Source US_ARMY = new Source("US Army manual of a 2 kW set: 1.3 % per 100 m above 1219 m, 3 % per 10 K above 35 degC",
            Status.RETRIEVED, "choose one rule, never add two");
    public static final Source ALTERNATOR = new Source("common practice", Status.COMMON_PRACTICE,
            "3 % per 500 m above 1000 m, 3 % per 5 K above 40 degC; choose one rule, never add two");
    public static final Source HOT_COMPARTMENT = new Source("46 CFR 183.320(b)", Status.RETRIEVED,
            "the overcurrent setting goes down with the power");
    public static final Source CATEGORIES = new Source("ISO 8528-1:2018, rating categories", Status.QUOTED,
            "the 30 % floor of the average is from memory");

    private RatingSources() {
    }
}
