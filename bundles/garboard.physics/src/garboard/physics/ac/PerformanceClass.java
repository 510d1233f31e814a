// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

/** Performance classes of ISO 8528-5 that have figures; G4 is by agreement. */
public enum PerformanceClass {
    G1, G2, G3
}
