// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Which row a person means by a few words. */
public final class Row {

    private Row() {
    }

    /** {@return the row that says just this, else the one that begins with it as a sentence, else the first in which it stands} */
    public static <T> Optional<T> named(String words, List<T> rows, Function<T, String> text) {
        return rows.stream().filter(row -> text.apply(row).equals(words)).findFirst()
            .or(() -> rows.stream().filter(row -> text.apply(row).startsWith(words + ".")).findFirst())
            .or(() -> rows.stream().filter(row -> text.apply(row).contains(words)).findFirst());
    }
}
