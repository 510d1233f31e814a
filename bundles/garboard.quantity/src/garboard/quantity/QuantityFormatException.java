// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A text or a unit is not one of the quantity wanted. The message is one sentence for the person who typed it: the kind, what
 * was found, what would be right.
 */
public final class QuantityFormatException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** Takes the sentence as it will be shown. */
    public QuantityFormatException(String message) {
        super(message);
    }
}
