// SPDX-License-Identifier: EPL-2.0
/**
 * Random records for the tests of this bundle and of those above it: every class and feature of the model, read from the Ecore model,
 * so that a feature added later is covered at once.
 */
package garboard.model.testing;
