// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

/** Practice of the mounting: beds and mounts, angles, clearance and access, guards, bonding. */
