// SPDX-License-Identifier: EPL-2.0
/** What a person does on a drawing, without the drawing: heeling the boat, moving a point, choosing a view. */
package garboard.session.drawing;
