// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.util.List;

/**
 * Something that a view cannot show, because a dimension is not entered.
 *
 * @param id of the part, or {@code hull}, {@code heel}
 * @param name what it is, in words
 * @param missing names of the dimensions that are missing
 * @param field key of the first of them in the record
 */
public record Lack(String id, String name, List<String> missing, String field) {
    public Lack {
        missing = List.copyOf(missing);
    }
}
