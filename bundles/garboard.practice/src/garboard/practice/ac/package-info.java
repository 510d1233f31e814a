// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

/** Practice of the AC output: sources, neutral and ground, overcurrent and residual-current devices, output cable, rating and loads. */
