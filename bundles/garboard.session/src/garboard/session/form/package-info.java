// SPDX-License-Identifier: EPL-2.0
/** The particulars in the order of a walk through the boat: which fields stand at which stop, in which groups. Read from {@code form.txt}. */
package garboard.session.form;
