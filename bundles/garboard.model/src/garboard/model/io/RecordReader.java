// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.io.ByteArrayInputStream;
import java.io.CharConversionException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.eclipse.emf.ecore.xmi.XMIResource;
import org.xml.sax.SAXParseException;

import garboard.model.CommissioningRecord;

/** Reads the bytes of a record file, all of it or nothing. */
final class RecordReader {

    /** No record is larger; a file that is would only fill the memory. */
    static final int LARGEST = 256 << 20;

    private static final int LONGEST_REASON = 400;

    /** What the messages call the file. */
    private final String name;

    RecordReader(String name) {
        this.name = name;
    }

    RecordResource read(Path file) throws RecordReadException {
        if (Files.isDirectory(file)) {
            throw refused("it is a folder; choose a record file in it");
        }
        if (Files.notExists(file)) {
            throw refused("there is no such file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return read(in, URI.createFileURI(file.toAbsolutePath().toString()));
        } catch (AccessDeniedException denied) {
            throw new RecordReadException(name + " cannot be read: there is no permission to read it", denied);
        } catch (IOException broken) {
            throw new RecordReadException(name + " cannot be read: " + broken.getMessage(), broken);
        }
    }

    RecordResource read(InputStream in) throws RecordReadException {
        try {
            return read(in, URI.createURI("garboard:record"));
        } catch (IOException broken) {
            throw new RecordReadException(name + " cannot be read: " + broken.getMessage(), broken);
        }
    }

    private RecordResource read(InputStream in, URI uri) throws IOException, RecordReadException {
        byte[] bytes = in.readNBytes(LARGEST + 1);
        if (bytes.length > LARGEST) {
            throw refused("it is larger than " + (LARGEST >> 20) + " MiB, and no record is");
        }
        if (bytes.length == 0) {
            throw refused("it is empty");
        }
        RecordResource resource = new RecordResource(uri);
        parse(bytes, resource);
        if (!resource.getErrors().isEmpty()) {
            throw new RecordReadException(new LoadFault(name).sentence(resource.getErrors().getFirst()));
        }
        if (resource.getContents().size() != 1 || !(resource.getContents().getFirst() instanceof CommissioningRecord)) {
            throw refused("there is no record in it");
        }
        // whatever version of XMI the file names, it is written in the one we write
        resource.setXMIVersion(XMIResource.VERSION_VALUE);
        return resource;
    }

    private void parse(byte[] bytes, RecordResource resource) throws RecordReadException {
        try {
            resource.load(new ByteArrayInputStream(bytes), Map.of());
        } catch (Refusal refusal) {
            throw new RecordReadException(name + atLine(refusal.line()) + " cannot be read: " + oneLine(refusal.getMessage()), refusal);
        } catch (IOException failed) {
            Throwable cause = failed instanceof Resource.IOWrappedException ? failed.getCause() : failed;
            // an XMIException tells what does not fit the model, and so does the list of errors of the resource
            if (!(cause instanceof XMIException)) {
                throw new RecordReadException(name + " cannot be read: " + why(cause, bytes, resource), failed);
            }
        }
    }

    private static String why(Throwable failed, byte[] bytes, RecordResource resource) {
        if (!beginsLikeXml(bytes)) {
            return "it is no record, not even XML; choose a file that ends in " + RecordFile.ENDING;
        }
        if (cause(failed, CharConversionException.class).isPresent() || cause(failed, UnsupportedEncodingException.class).isPresent()) {
            return "its characters are not in the encoding that it claims; right would be UTF-8";
        }
        Optional<SAXParseException> malformed = cause(failed, SAXParseException.class);
        if (malformed.isEmpty()) {
            return failed.getMessage();
        }
        int line = malformed.get().getLineNumber();
        if (!resource.endAwaited().isEmpty() && !endsWith(bytes, resource.endAwaited())) {
            return "it is cut off after line " + line + ", the end of the record is missing";
        }
        return "in line " + line + " it is not well-formed XML (" + oneLine(malformed.get().getMessage()).replaceAll("\\.$", "") + ")";
    }

    private static <T extends Throwable> Optional<T> cause(Throwable thrown, Class<T> type) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (type.isInstance(cause)) {
                return Optional.of(type.cast(cause));
            }
        }
        return Optional.empty();
    }

    private static boolean beginsLikeXml(byte[] bytes) {
        String beginning = new String(bytes, 0, Math.min(bytes.length, 100), StandardCharsets.UTF_8);
        return beginning.replace("\uFEFF", "").stripLeading().startsWith("<");
    }

    private static boolean endsWith(byte[] bytes, String tag) {
        int from = Math.max(0, bytes.length - 1000);
        return new String(bytes, from, bytes.length - from, StandardCharsets.UTF_8).stripTrailing().endsWith(tag);
    }

    /** {@return a text that quotes a file, fit to stand in a sentence} */
    static String oneLine(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        return line.length() > LONGEST_REASON ? line.substring(0, LONGEST_REASON) + "..." : line;
    }

    static String atLine(int line) {
        return line > 0 ? ", line " + line + "," : "";
    }

    private RecordReadException refused(String reason) {
        return new RecordReadException(name + " cannot be read: " + reason);
    }
}
