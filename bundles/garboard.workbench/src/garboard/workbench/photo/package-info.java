// SPDX-License-Identifier: EPL-2.0
/** Photographs in the window: taken in from files, drags and the clipboard, shown small and large. */
package garboard.workbench.photo;
