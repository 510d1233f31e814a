// SPDX-License-Identifier: EPL-2.0
/** Where a window stands on the screens of today. */
package garboard.session.window;
