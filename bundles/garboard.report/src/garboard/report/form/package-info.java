// SPDX-License-Identifier: EPL-2.0
/**
 * The form that is filled in on board, as plain values: which sheets, which fields, in the order of a walk through the boat. Read
 * from the Ecore model, so that a new field of the model is in the form without further ado. Nothing here knows a file format.
 */
package garboard.report.form;
