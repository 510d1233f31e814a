// SPDX-License-Identifier: EPL-2.0
/** Flow in pipes and hoses: fluids, bores, friction, fittings, and what they cost in pressure. */
package garboard.physics.pipe;
