// SPDX-License-Identifier: EPL-2.0
/**
 * Reading and saving record files so that nothing is lost, and the ids of the items in a record. {@link garboard.model.io.RecordFile} is the
 * way in.
 */
package garboard.model.io;
