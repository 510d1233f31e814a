// SPDX-License-Identifier: EPL-2.0
/** Tests of the example records. */
package garboard.examples;
