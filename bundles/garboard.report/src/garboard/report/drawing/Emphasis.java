// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.util.Optional;

/**
 * What stands out on a sheet.
 *
 * @param chosen id of the part that a person has chosen
 * @param focused whether the keyboard acts on it
 * @param pointedAt id of the part under the pointer
 */
public record Emphasis(Optional<String> chosen, boolean focused, Optional<String> pointedAt) {
    public static final Emphasis NONE = new Emphasis(Optional.empty(), false, Optional.empty());

    boolean isChosen(String id) {
        return chosen.filter(id::equals).isPresent();
    }

    boolean isPointedAt(String id) {
        return pointedAt.filter(id::equals).isPresent();
    }
}
