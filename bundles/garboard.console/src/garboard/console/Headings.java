// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import garboard.model.CommissioningRecord;

/** One line that says which record this is. */
final class Headings {

    private Headings() {
    }

    static String of(CommissioningRecord record) {
        String vessel = record.getVessel() == null ? null : record.getVessel().getName();
        String set = record.getGeneratorSet() == null ? null
                : Stream.of(record.getGeneratorSet().getMaker(), record.getGeneratorSet().getType())
                        .filter(Objects::nonNull).collect(Collectors.joining(" "));
        String heading = Stream.of(record.getRecordNumber(), record.getTitle(), vessel, set)
                .filter(text -> text != null && !text.isBlank()).distinct().collect(Collectors.joining(" · "));
        return heading.isEmpty() ? "A record without number, vessel or set" : heading;
    }
}
