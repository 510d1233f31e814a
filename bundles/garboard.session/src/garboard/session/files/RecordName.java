// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.util.Optional;
import java.util.stream.Stream;

import garboard.model.CommissioningRecord;
import garboard.model.GeneratorSet;
import garboard.model.Vessel;
import garboard.model.io.RecordFile;
import garboard.session.OpenRecord;

/** What a record is called where there is little room, and what its file could be called. */
public final class RecordName {

    private static final int LONGEST = 80;

    private RecordName() {
    }

    /** {@return the name of the record's file, else that of the vessel or the title; nothing for a record without any} */
    public static Optional<String> of(OpenRecord record) {
        return record.file().map(file -> file.getFileName().toString()).or(() -> called(record.record()));
    }

    /** {@return the name of the vessel, else the title} */
    public static Optional<String> called(CommissioningRecord record) {
        return vessel(record).or(() -> given(record.getTitle()));
    }

    /** {@return the vessel by name} */
    public static Optional<String> vessel(CommissioningRecord record) {
        return Optional.ofNullable(record.getVessel()).map(Vessel::getName).flatMap(RecordName::given);
    }

    /** {@return the set by maker, type and power, as far as they are entered} */
    public static Optional<String> set(CommissioningRecord record) {
        GeneratorSet set = record.getGeneratorSet();
        return set == null ? Optional.empty()
            : Stream.of(set.getMaker(), set.getType(), set.getRatedPower()).filter(part -> part != null).map(Object::toString)
                .flatMap(part -> given(part).stream()).reduce((one, other) -> one + " " + other);
    }

    /** {@return a name for the file of a record that has none yet} Made of letters, digits, blanks and hyphens, which every system takes. */
    public static String proposed(CommissioningRecord record, String otherwise) {
        String name = called(record).orElse(otherwise).replaceAll("[^\\p{L}\\p{M}\\p{N} _-]+", " ").replaceAll("\\s+", " ").strip();
        return (name.isEmpty() ? "record" : name.length() > LONGEST ? name.substring(0, LONGEST).strip() : name) + RecordFile.ENDING;
    }

    private static Optional<String> given(String text) {
        return Optional.ofNullable(text).map(String::strip).filter(line -> !line.isEmpty());
    }
}
