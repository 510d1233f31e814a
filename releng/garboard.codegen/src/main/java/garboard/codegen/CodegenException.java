// SPDX-License-Identifier: EPL-2.0
package garboard.codegen;

/** The model cannot be turned into code, or the code in the repository is not what the model gives. */
public final class CodegenException extends Exception {

    private static final long serialVersionUID = 1L;

    CodegenException(String message) {
        super(message);
    }
}
