// SPDX-License-Identifier: EPL-2.0
/** Checks of ventilation and combustion air: the law for gasoline, small passenger vessels, heat, depression and areas. */
package garboard.practice.ventilation;
