// SPDX-License-Identifier: EPL-2.0
/** What a person is asked outside of the parts of the window, behind one interface; and the dialogs that ask. */
package garboard.workbench.ask;
