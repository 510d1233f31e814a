// SPDX-License-Identifier: EPL-2.0
/** Published tables as CSV files that name their source, and how they are read and interpolated. */
package garboard.physics.reference;
