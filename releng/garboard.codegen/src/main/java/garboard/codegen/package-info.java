// SPDX-License-Identifier: EPL-2.0
/**
 * Writes the Java code of the record model from {@code garboard.ecore} and {@code garboard.genmodel} in a plain JVM,
 * and compares it with the code in the repository. Build-time only: nothing here goes into a product.
 */
package garboard.codegen;
