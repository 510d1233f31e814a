// SPDX-License-Identifier: EPL-2.0
/**
 * How fields of the record are shown and filled in, wherever that is done: rows of fields, lists edited in place, the help to a field.
 * What a page needs is {@link garboard.workbench.fields.FieldRows} and {@link garboard.workbench.fields.ItemsEditor}; everything typed goes
 * through {@link garboard.session.Edits}, and everything shown follows the record.
 */
package garboard.workbench.fields;
