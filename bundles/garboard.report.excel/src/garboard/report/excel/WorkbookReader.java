// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import garboard.report.VerdictOfTheDay;

/**
 * Takes the record and the verdicts of the day out of a workbook again. Opens only the parts that hold them, so that neither a large
 * workbook nor a malicious one costs more than its own enclosures. Stateless.
 */
public final class WorkbookReader {

    private static final Pattern ITEM = Pattern.compile("/?customXml/item\\d+\\.xml", Pattern.CASE_INSENSITIVE);
    /** Far beyond a record with all its photographs. */
    private static final long MOST_BYTES = 256L << 20;
    /** Letters that stand for compressed bytes cannot be packed much tighter; what unpacks to more than this is a trap. */
    private static final long MOST_EXPANSION = 50;
    private static final long ALWAYS_ALLOWED = 1 << 20;
    private static final int MOST_PARTS = 50_000;

    /**
     * The file of the record that a workbook carries.
     *
     * @throws WorkbookReadException when the file is no workbook, carries no record, or the record in it is damaged
     */
    public EmbeddedRecord readEnclosedFile(Path workbook) throws WorkbookReadException {
        return find(workbook, Enclosures.RECORD, xml -> record(workbook, xml)).orElseThrow(
            () -> new WorkbookReadException("The workbook " + workbook + " carries no record."));
    }

    /**
     * The verdicts that were given on the day the workbook was written; none when it carries none.
     *
     * @throws WorkbookReadException when the file is no workbook or the verdicts in it are damaged
     */
    public List<VerdictOfTheDay> readVerdicts(Path workbook) throws WorkbookReadException {
        return find(workbook, Enclosures.VERDICTS, WorkbookReader::verdicts).orElse(List.of());
    }

    private interface Taking<T> {
        T from(XMLStreamReader xml) throws XMLStreamException, IOException;
    }

    private static <T> Optional<T> find(Path workbook, String element, Taking<T> taking) throws WorkbookReadException {
        if (Files.isDirectory(workbook)) {
            throw new WorkbookReadException("The workbook " + workbook + " cannot be read: it is a folder.");
        }
        try (var zip = new ZipFile(workbook.toFile())) {
            if (zip.size() > MOST_PARTS) {
                throw new WorkbookReadException("The workbook " + workbook + " has " + zip.size() + " parts, more than any workbook needs.");
            }
            boolean isWorkbook = zip.getEntry("[Content_Types].xml") != null;
            if (!isWorkbook) {
                throw new WorkbookReadException("The file " + workbook + " is no Excel workbook.");
            }
            for (ZipEntry entry : Collections.list(zip.entries())) {
                Optional<T> found = ITEM.matcher(entry.getName()).matches() ? take(zip, entry, element, taking) : Optional.empty();
                if (found.isPresent()) {
                    return found;
                }
            }
            return Optional.empty();
        } catch (WorkbookReadException ours) {
            throw ours;
        } catch (ZipException noZip) {
            throw new WorkbookReadException("The file " + workbook + " is no Excel workbook, or it was cut short.", noZip);
        } catch (XMLStreamException broken) {
            throw new WorkbookReadException("The record inside the workbook " + workbook + " is damaged.", broken);
        } catch (IOException failed) {
            throw new WorkbookReadException("The workbook " + workbook + " cannot be read: " + IoReason.of(failed) + ".", failed);
        }
    }

    private static <T> Optional<T> take(ZipFile zip, ZipEntry entry, String element, Taking<T> taking)
            throws IOException, XMLStreamException {
        long allowed = Math.min(MOST_BYTES, Math.max(ALWAYS_ALLOWED, entry.getCompressedSize() * MOST_EXPANSION));
        try (InputStream in = new Limited(zip.getInputStream(entry), allowed, "the part " + entry.getName())) {
            XMLStreamReader xml = safeFactory().createXMLStreamReader(in);
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                    boolean ours = Enclosures.NAMESPACE.equals(xml.getNamespaceURI()) && element.equals(xml.getLocalName());
                    return ours ? Optional.of(taking.from(xml)) : Optional.empty();
                }
            }
            return Optional.empty();
        } catch (XMLStreamException broken) {
            if (broken.getNestedException() instanceof IOException failed) {
                throw failed;
            }
            throw broken;
        }
    }

    private static EmbeddedRecord record(Path workbook, XMLStreamReader xml) throws XMLStreamException, IOException {
        String fileName = attribute(xml, Enclosures.FILE_NAME);
        String sha256 = attribute(xml, Enclosures.SHA_256);
        byte[] packed;
        try {
            packed = Base64.getMimeDecoder().decode(xml.getElementText());
        } catch (IllegalArgumentException noBase64) {
            throw new WorkbookReadException("The record inside the workbook " + workbook + " is damaged.", noBase64);
        }
        byte[] bytes;
        try (var unpacked = new Limited(new GZIPInputStream(new ByteArrayInputStream(packed)), MOST_BYTES, "the record")) {
            bytes = unpacked.readAllBytes();
        } catch (ZipException | java.io.EOFException broken) {
            throw new WorkbookReadException("The record inside the workbook " + workbook + " is damaged.", broken);
        }
        if (!Enclosures.sha256(bytes).equals(sha256)) {
            throw new WorkbookReadException("The record inside the workbook " + workbook + " was changed since it was written.");
        }
        return new EmbeddedRecord(fileName, bytes);
    }

    private static List<VerdictOfTheDay> verdicts(XMLStreamReader xml) throws XMLStreamException {
        var verdicts = new ArrayList<VerdictOfTheDay>();
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT && "verdict".equals(xml.getLocalName())) {
                verdicts.add(new VerdictOfTheDay(attribute(xml, "check"), attribute(xml, "subject"), attribute(xml, "standing"),
                    attribute(xml, "measured"), attribute(xml, "limit"), attribute(xml, "margin"), attribute(xml, "sentence")));
            }
        }
        return List.copyOf(verdicts);
    }

    private static String attribute(XMLStreamReader xml, String name) {
        String value = xml.getAttributeValue(null, name);
        return value == null ? "" : value;
    }

    /** A document type or a reference to a file has no business in a workbook. */
    private static XMLInputFactory safeFactory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        return factory;
    }
}
