// SPDX-License-Identifier: EPL-2.0
package garboard.physics.calculation;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All calculations that are offered under a name. */
public final class Calculations {

    private Calculations() {
    }

    /** In the order of reading: wet side first, then electrical. */
    public static List<Calculation> all() {
        return Stream.<List<Calculation>>of().flatMap(List::stream).toList();
    }

    /** The calculation of that name. */
    public static Optional<Calculation> find(String name) {
        return all().stream().filter(calculation -> calculation.name().equals(name)).findFirst();
    }
}
