// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/** The two systems a reader may want figures in. What a person entered stays in the unit they gave, whichever is chosen. */
public enum UnitSystem {
    /** SI with the trade's metric units: mm, kPa, degC, L/min. */
    SI,
    /** United States customary units: in, psi, degF, US gal/min. */
    US
}
