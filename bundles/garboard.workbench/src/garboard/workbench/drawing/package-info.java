// SPDX-License-Identifier: EPL-2.0
/** The drawings in the window: what is laid out in {@code garboard.report.drawing} on a canvas, with pointer, keyboard and sliders. */
package garboard.workbench.drawing;
