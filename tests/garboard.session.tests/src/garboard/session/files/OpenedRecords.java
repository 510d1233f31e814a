// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import garboard.checks.Catalogue;
import garboard.examples.Examples;
import garboard.model.GarboardPackage.Literals;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.session.Field;
import garboard.session.OpenRecord;

/** Records opened for tests that are about their files and not about their verdicts. */
public final class OpenedRecords {

    /** The moment at which all of these tests happen. */
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-01T08:00:00Z"), ZoneOffset.UTC);

    private OpenedRecords() {
    }

    /** {@return a catalogue without checks} */
    public static Catalogue noChecks() {
        return Catalogue.of(List.of());
    }

    /** {@return a record with nothing in it, never saved} */
    public static OpenRecord empty() {
        return of(RecordFile.create(), Optional.empty());
    }

    /** {@return an example, as if it had been read from a file} */
    public static OpenRecord example(String name, Path file) {
        return of(example(name), Optional.of(file));
    }

    /** {@return the content of an example} */
    public static RecordFile example(String name) {
        try (InputStream in = Examples.find(name).orElseThrow().open()) {
            return RecordFile.read(in, name);
        } catch (IOException | RecordReadException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** {@return a record that is open} */
    public static OpenRecord of(RecordFile content, Optional<Path> file) {
        return OpenRecord.of(content, file, noChecks(), CLOCK);
    }

    /** Renames the vessel, as by typing. */
    public static void rename(OpenRecord record, String vessel) {
        record.edits().set(vesselName(record), vessel, "Name");
    }

    /** {@return the field with the name of the vessel} */
    public static Field vesselName(OpenRecord record) {
        return Field.of(record.record(), Literals.COMMISSIONING_RECORD__VESSEL, Literals.VESSEL__NAME);
    }
}
