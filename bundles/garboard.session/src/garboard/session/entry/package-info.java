// SPDX-License-Identifier: EPL-2.0
/**
 * What a person types into a field, without the field on the screen: what it stands for, what is wrong with it, how an entry is written
 * and converted.
 */
package garboard.session.entry;
