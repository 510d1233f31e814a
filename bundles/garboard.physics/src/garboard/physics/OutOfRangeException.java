// SPDX-License-Identifier: EPL-2.0
package garboard.physics;

import garboard.quantity.ImplausibleInput;

/** An argument for which the formula has no answer. The message names the argument, what was found and what would be right. */
public final class OutOfRangeException extends IllegalArgumentException implements ImplausibleInput {

    private static final long serialVersionUID = 1L;

    private final String argument;

    private OutOfRangeException(String argument, String message) {
        super(message);
        this.argument = argument;
    }

    /**
     * @param argument name of the argument as the formula's description has it, such as {@code bore}
     * @param found what was given: a quantity, a number or a word
     * @param right what would be right, such as {@code more than 0}
     */
    public static OutOfRangeException of(String argument, Object found, String right) {
        return new OutOfRangeException(argument, argument + " is " + found + ", but has to be " + right);
    }

    /** Name of the argument that was out of range. */
    public String argument() {
        return argument;
    }
}
