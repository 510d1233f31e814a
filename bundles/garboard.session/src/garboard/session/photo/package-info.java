// SPDX-License-Identifier: EPL-2.0
/** Photographs on their way into a record: whether a file is a picture that can be kept, how large it is, when it was taken, smaller copies. */
package garboard.session.photo;
