// SPDX-License-Identifier: EPL-2.0
package garboard.report.form;

import java.util.List;

/**
 * One sheet of the form.
 *
 * @param name short enough for a tab
 * @param parts in the order of the walk
 */
public record FormSheet(String name, List<FormPart> parts) {
    public FormSheet {
        parts = List.copyOf(parts);
    }
}
