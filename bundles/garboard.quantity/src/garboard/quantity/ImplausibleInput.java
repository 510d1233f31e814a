// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * Marks an exception that says: what was entered cannot be right, such as a negative bore. The fault is in the entry, not in the
 * program; the message names the entry, what was found and what would be right.
 */
public interface ImplausibleInput {

    /** What was found and what would be right, in one sentence. */
    String getMessage();
}
