// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;

/**
 * One sheet of the workbook.
 *
 * @param name on the tab: at most 31 characters, none of those that a workbook refuses
 * @param heading at its head
 * @param orientation how it lies
 * @param blocks from top to bottom
 */
public record Sheet(String name, String heading, Orientation orientation, List<Block> blocks) {

    private static final int LONGEST_NAME = 31;

    public Sheet {
        if (name.isBlank() || name.length() > LONGEST_NAME || name.matches(".*[\\\\/?*\\[\\]:].*")) {
            throw new IllegalArgumentException("A sheet cannot be called \"" + name + "\"");
        }
        blocks = List.copyOf(blocks);
    }
}
