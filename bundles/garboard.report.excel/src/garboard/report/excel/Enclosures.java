// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.GZIPOutputStream;

import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import garboard.report.VerdictOfTheDay;

/**
 * Puts the record and the verdicts of the day into a workbook as custom XML parts (ECMA-376 part 1, 15.2.5), the place that office
 * programs keep when they save. The record stands there compressed and in letters, so that a program that rewrites the XML
 * around it cannot change a byte of it.
 */
final class Enclosures {

    static final String NAMESPACE = "urn:garboard:workbook:1";
    static final String RECORD = "record";
    static final String VERDICTS = "verdicts";
    static final String FILE_NAME = "fileName";
    static final String SIZE = "size";
    static final String SHA_256 = "sha256";

    private static final String PREFIX = "garboard";
    private static final String ITEM_RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/customXml";
    private static final String PROPERTIES_RELATION = ITEM_RELATION + "Props";
    private static final String PROPERTIES_TYPE = "application/vnd.openxmlformats-officedocument.customXmlProperties+xml";
    private static final String PROPERTIES_NAMESPACE = "http://schemas.openxmlformats.org/officeDocument/2006/customXml";
    private static final String[] ITEM_IDS = {"{6B1E6E0C-7C53-4D0B-9E0B-5C1B6F0D5A01}", "{6B1E6E0C-7C53-4D0B-9E0B-5C1B6F0D5A02}"};

    private Enclosures() {
    }

    static void encloseRecord(XSSFWorkbook workbook, EmbeddedRecord record) {
        byte[] packed = Base64.getMimeEncoder(76, new byte[] {'\n'}).encode(gzip(record.bytes()));
        enclose(workbook, 1, xml -> {
            xml.writeStartElement(PREFIX, RECORD, NAMESPACE);
            xml.writeNamespace(PREFIX, NAMESPACE);
            xml.writeAttribute(FILE_NAME, record.fileName());
            xml.writeAttribute(SIZE, Integer.toString(record.bytes().length));
            xml.writeAttribute(SHA_256, sha256(record.bytes()));
            xml.writeCharacters(new String(packed, StandardCharsets.US_ASCII));
            xml.writeEndElement();
        });
    }

    static void encloseVerdicts(XSSFWorkbook workbook, List<VerdictOfTheDay> verdicts, String day) {
        enclose(workbook, 2, xml -> {
            xml.writeStartElement(PREFIX, VERDICTS, NAMESPACE);
            xml.writeNamespace(PREFIX, NAMESPACE);
            xml.writeAttribute("printedAt", day);
            for (VerdictOfTheDay verdict : verdicts) {
                xml.writeEmptyElement(PREFIX, "verdict", NAMESPACE);
                xml.writeAttribute("check", verdict.check());
                xml.writeAttribute("subject", verdict.subject());
                xml.writeAttribute("standing", verdict.standing());
                xml.writeAttribute("measured", verdict.measured());
                xml.writeAttribute("limit", verdict.limit());
                xml.writeAttribute("margin", verdict.margin());
                xml.writeAttribute("sentence", verdict.sentence());
            }
            xml.writeEndElement();
        });
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    private interface Body {
        void write(XMLStreamWriter xml) throws XMLStreamException;
    }

    private static void enclose(XSSFWorkbook workbook, int number, Body body) {
        try {
            OPCPackage container = workbook.getPackage();
            PackagePartName itemName = PackagingURIHelper.createPartName("/customXml/item" + number + ".xml");
            PackagePart item = container.createPart(itemName, "application/xml");
            write(item, body);
            workbook.getPackagePart().addRelationship(itemName, TargetMode.INTERNAL, ITEM_RELATION);
            PackagePartName propertiesName = PackagingURIHelper.createPartName("/customXml/itemProps" + number + ".xml");
            write(container.createPart(propertiesName, PROPERTIES_TYPE), xml -> properties(xml, ITEM_IDS[number - 1]));
            item.addRelationship(propertiesName, TargetMode.INTERNAL, PROPERTIES_RELATION);
        } catch (InvalidFormatException | XMLStreamException | IOException inMemory) {
            throw new IllegalStateException(inMemory);
        }
    }

    private static void properties(XMLStreamWriter xml, String id) throws XMLStreamException {
        xml.writeStartElement("ds", "datastoreItem", PROPERTIES_NAMESPACE);
        xml.writeNamespace("ds", PROPERTIES_NAMESPACE);
        xml.writeAttribute("ds", PROPERTIES_NAMESPACE, "itemID", id);
        xml.writeStartElement("ds", "schemaRefs", PROPERTIES_NAMESPACE);
        xml.writeEmptyElement("ds", "schemaRef", PROPERTIES_NAMESPACE);
        xml.writeAttribute("ds", PROPERTIES_NAMESPACE, "uri", NAMESPACE);
        xml.writeEndElement();
        xml.writeEndElement();
    }

    private static void write(PackagePart part, Body body) throws IOException, XMLStreamException {
        try (OutputStream out = part.getOutputStream()) {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
            xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
            body.write(xml);
            xml.writeEndDocument();
            xml.close();
        }
    }

    private static byte[] gzip(byte[] bytes) {
        var packed = new ByteArrayOutputStream();
        try (var out = new GZIPOutputStream(packed)) {
            out.write(bytes);
        } catch (IOException inMemory) {
            throw new IllegalStateException(inMemory);
        }
        return packed.toByteArray();
    }
}
