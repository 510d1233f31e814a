// SPDX-License-Identifier: EPL-2.0
/** The window: parts, pages, handlers. Thin: what they show and do is in {@code garboard.session} and the bundles below it. */
package garboard.workbench;
