// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/** No such quantity exists: a temperature below absolute zero or a pressure below a vacuum. */
public final class ImplausibleQuantityException extends IllegalArgumentException implements ImplausibleInput {

    private static final long serialVersionUID = 1L;

    ImplausibleQuantityException(String message) {
        super(message);
    }
}
