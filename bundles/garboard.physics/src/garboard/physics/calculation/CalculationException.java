// SPDX-License-Identifier: EPL-2.0
package garboard.physics.calculation;

/** A calculation could not be evaluated with the arguments as given. The message names the argument and says what would be right. */
public final class CalculationException extends Exception {

    private static final long serialVersionUID = 1L;

    private final String argument;

    CalculationException(String argument, String message) {
        super(message);
        this.argument = argument;
    }

    CalculationException(String argument, String message, Throwable cause) {
        super(message, cause);
        this.argument = argument;
    }

    /** Name of the argument that is at fault, or of the calculation where the arguments do not go together. */
    public String argument() {
        return argument;
    }
}
