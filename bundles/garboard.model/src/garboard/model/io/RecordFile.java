// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xml.type.AnyType;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;

/**
 * A record and its file. The file is XMI in UTF-8; its name ends in {@link #ENDING}. Reading takes a file whole or refuses it in one
 * sentence; saving replaces the file in one step, so that a crash leaves the old content or the new one.
 *
 * <p>What a newer program wrote and this one does not know is kept and written back: unknown attributes, unknown elements with all that
 * is in them, parts of an unknown type (xsi:type). It comes back behind the known elements of the same part. Not kept are comments and
 * stray text outside unknown elements, and the spelling of namespace prefixes. A choice (enumeration literal) that is not known is
 * refused, for it stands in a field that is.
 */
public final class RecordFile {

    /** How the names of record files end. */
    public static final String ENDING = ".garboard";

    private final RecordResource resource;
    private final CommissioningRecord record;
    private final List<String> notes;

    private RecordFile(RecordResource resource, List<String> notes) {
        this.resource = resource;
        this.record = (CommissioningRecord) resource.getContents().getFirst();
        this.notes = List.copyOf(notes);
    }

    /** {@return a new record with nothing entered, not saved anywhere} */
    public static RecordFile create() {
        CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        record.setFormatVersion(FormatVersion.CURRENT.toString());
        return of(record);
    }

    /** {@return the file for a record that was made otherwise, not saved anywhere} If it belongs to a resource, it leaves that. */
    public static RecordFile of(CommissioningRecord record) {
        RecordResource resource = new RecordResource(URI.createURI("garboard:record"));
        resource.getContents().add(record);
        return new RecordFile(resource, List.of());
    }

    /**
     * Reads a file.
     *
     * @throws RecordReadException when there is no whole record in it, with one sentence that tells why
     */
    public static RecordFile open(Path file) throws RecordReadException {
        return opened(new RecordReader(file.toString()).read(file));
    }

    /**
     * Reads a record from a stream, to its end; the stream is left open.
     *
     * @param nameForMessages what messages call the source, as {@code the record in boat.xlsx}
     * @throws RecordReadException when there is no whole record in it, with one sentence that tells why
     */
    public static RecordFile read(InputStream in, String nameForMessages) throws RecordReadException {
        return opened(new RecordReader(nameForMessages).read(in));
    }

    /** {@return the record, to be read and edited} */
    public CommissioningRecord record() {
        return record;
    }

    /** {@return the EMF resource that holds the record} */
    public Resource resource() {
        return resource;
    }

    /** {@return the ids of the items in the record} */
    public Items items() {
        return Items.of(record);
    }

    /** {@return what the reader of the file should know, a sentence each; empty when all is in order} */
    public List<String> notes() {
        return notes;
    }

    /**
     * {@return a copy of everything, also of what this program does not know and of the ids that are gone} Once made, it can be read and
     * written on another thread while this one is edited; the bytes of photographs are shared, not copied.
     */
    public RecordFile copy() {
        RecordFile copy = new RecordFile(resource.copy(), notes);
        IdLedger.of(copy.record).noteAll(IdLedger.of(record));
        return copy;
    }

    /**
     * Writes the record in place of what the file holds. Items without an id get one, references to what is no longer in the record go.
     *
     * @throws RecordWriteException when that is not possible, with one sentence that tells why; the file is then as it was
     */
    public void save(Path file) throws RecordWriteException {
        save(file, FileSteps.REAL);
    }

    /** {@return the bytes that {@link #save} would write, which {@link #read} reads back}
     *
     * @throws RecordWriteException when the record holds what no file can hold, with one sentence that tells where
     */
    public byte[] toBytes() throws RecordWriteException {
        // a copy that is written on another thread has the same names
        synchronized (resource.names()) {
            return new RecordWriter(resource, record).bytes();
        }
    }

    void save(Path file, FileSteps steps) throws RecordWriteException {
        if (Files.isDirectory(file)) {
            throw new RecordWriteException(file + " cannot be written: it is a folder; choose a file name");
        }
        byte[] bytes = toBytes();
        try {
            new AtomicFile(steps).replace(file, bytes);
        } catch (AccessDeniedException denied) {
            throw new RecordWriteException(file + " cannot be written: there is no permission to write the file or in its folder", denied);
        } catch (NoSuchFileException missing) {
            throw new RecordWriteException(file + " cannot be written: its folder does not exist", missing);
        } catch (FileSystemException failed) {
            String reason = failed.getReason() == null ? failed.getMessage() : failed.getReason();
            throw new RecordWriteException(file + " cannot be written: " + reason, failed);
        } catch (IOException failed) {
            throw new RecordWriteException(file + " cannot be written: " + failed.getMessage(), failed);
        }
    }

    private static RecordFile opened(RecordResource resource) {
        CommissioningRecord record = (CommissioningRecord) resource.getContents().getFirst();
        List<String> notes = new ArrayList<>();
        versionNote(record).ifPresent(notes::add);
        Items items = Items.of(record);
        idsGivenBefore(resource, record).ifPresent(items::remember);
        notes.addAll(items.assign());
        return new RecordFile(resource, notes);
    }

    private static Optional<String> versionNote(CommissioningRecord record) {
        return Optional.ofNullable(record.getFormatVersion())
            .filter(written -> FormatVersion.of(written).map(version -> version.compareTo(FormatVersion.CURRENT) > 0).orElse(true))
            .map(written -> "The record is in format version " + written + " and this program knows " + FormatVersion.CURRENT
                + "; what it does not know is kept in the file and not shown");
    }

    private static Optional<String> idsGivenBefore(RecordResource resource, CommissioningRecord record) {
        AnyType unknown = resource.getEObjectToExtensionMap().get(record);
        if (unknown == null) {
            return Optional.empty();
        }
        EStructuralFeature last = resource.names().demandFeature(RecordWriter.IDS, RecordWriter.LAST, false);
        return Optional.ofNullable(unknown.getAnyAttribute().get(last, true)).map(Object::toString);
    }
}
