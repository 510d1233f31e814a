// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import garboard.quantity.Length;

/** Bores in which fuel hose is sold: nominal bores of rubber hose, ISO 1307, from memory. */
final class FuelHoseBore {

    private static final List<Length> ALL = Stream.of(6.3, 8.0, 10.0, 12.5, 16.0, 19.0).map(bore -> Length.of(bore, "mm")).toList();

    private FuelHoseBore() {
    }

    /** Smallest first. */
    static List<Length> all() {
        return ALL;
    }

    /** The smallest that is no narrower, or nothing where none is so wide. */
    static Optional<Length> atLeast(Length bore) {
        return ALL.stream().filter(size -> !size.isLessThan(bore)).findFirst();
    }
}
