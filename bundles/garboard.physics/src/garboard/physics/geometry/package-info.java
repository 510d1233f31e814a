// SPDX-License-Identifier: EPL-2.0
/** Heel and trim: heights of points above the inclined water plane, places to build for, and falls of runs. */
package garboard.physics.geometry;
