// SPDX-License-Identifier: EPL-2.0
/**
 * The trial without a window: the first start step by step and what must hold before it, the water that cranking pumps into the muffler, the
 * load steps and what they still lack, the readings as curves, the heights at the attitude seen under way.
 */
package garboard.session.trial;
