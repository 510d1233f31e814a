// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import garboard.physics.Argument;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Length;

/** A size in which hose is sold: its name and its bore. */
public record HoseSize(String name, Length bore) {

    private static final List<HoseSize> ALL = read(ReferenceTable.load("hose-bores.csv"));

    /** All sizes, smallest first. */
    public static List<HoseSize> all() {
        return ALL;
    }

    /** Smallest size with at least this bore (a hundredth of a millimetre is forgiven), or nothing where none is that large. */
    public static Optional<HoseSize> atLeast(Length bore) {
        double leastM = Argument.positive("bore", bore) - 1e-5;
        return ALL.stream().filter(size -> size.bore.si() >= leastM).findFirst();
    }

    /** Next size above this bore, or nothing above the largest. */
    public static Optional<HoseSize> above(Length bore) {
        double boreM = Argument.positive("bore", bore) + 1e-4;
        return ALL.stream().filter(size -> size.bore.si() > boreM).findFirst();
    }

    private static List<HoseSize> read(ReferenceTable table) {
        return IntStream.range(0, table.rowCount())
            .mapToObj(row -> new HoseSize(table.text(row, "size"), Length.of(table.figure(row, "bore_mm").orElseThrow(), "mm")))
            .sorted(Comparator.comparing(HoseSize::bore)).toList();
    }
}
