// SPDX-License-Identifier: EPL-2.0
/**
 * A practice as a stranger would contribute it: the house rules of a made-up yard. It sees the engine and the model alone, and nothing in
 * the program knows of it; the extension in plugin.xml is all it takes.
 */
package garboard.practice.sample;
