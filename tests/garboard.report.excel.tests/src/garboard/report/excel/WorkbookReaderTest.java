// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkbookReaderTest {

    private static final String ITEM = "customXml/item1.xml";

    @TempDir
    private Path folder;
    private Path workbook;
    private final WorkbookReader reader = new WorkbookReader();

    @BeforeEach
    void write() throws IOException {
        workbook = folder.resolve("report.xlsx");
        new WorkbookWriter().write(HandMade.everything(), HandMade.RECORD, workbook, Progress.none());
    }

    @Test
    void givesTheRecordBackByteForByte() throws WorkbookReadException {
        EmbeddedRecord back = reader.readEnclosedFile(workbook);
        assertThat(back.bytes()).isEqualTo(HandMade.RECORD.bytes());
        assertThat(back.fileName()).isEqualTo("boat & co.garboard");
    }

    @Test
    void givesTheVerdictsOfTheDayBack() throws WorkbookReadException {
        assertThat(reader.readVerdicts(workbook)).isEqualTo(HandMade.VERDICTS);
    }

    @Test
    void survivesBeingOpenedAndSavedByAProgramThatKeepsWhatItDoesNotKnow() throws IOException {
        Path saved = folder.resolve("saved.xlsx");
        try (var opened = new XSSFWorkbook(Files.newInputStream(workbook)); var out = Files.newOutputStream(saved)) {
            opened.getSheetAt(0).createRow(200).createCell(0).setCellValue("a note by the owner");
            opened.write(out);
        }
        assertThat(reader.readEnclosedFile(saved).bytes()).isEqualTo(HandMade.RECORD.bytes());
    }

    @Test
    void aLargeRecordComesBackToo() throws IOException {
        byte[] large = new byte[6_000_000];
        new java.util.Random(7).nextBytes(large);
        Arrays.fill(large, 0, 3_000_000, (byte) 'x');
        Path target = folder.resolve("large.xlsx");
        new WorkbookWriter().write(HandMade.of(HandMade.upright("Plan", HandMade.plan())), new EmbeddedRecord("large.garboard", large), target,
            Progress.none());
        assertThat(reader.readEnclosedFile(target).bytes()).isEqualTo(large);
    }

    @Test
    void aForeignWorkbookIsToldInOneSentence() throws IOException {
        Path foreign = folder.resolve("foreign.xlsx");
        try (var made = new XSSFWorkbook(); var out = Files.newOutputStream(foreign)) {
            made.createSheet("Sheet1").createRow(0).createCell(0).setCellValue("something else");
            made.write(out);
        }
        assertRefused(foreign, "carries no record");
        assertThat(reader.readVerdicts(foreign)).isEmpty();
    }

    @Test
    void filesThatAreNoWorkbooksAreToldInOneSentence() throws IOException {
        assertRefused(Files.writeString(folder.resolve("text.xlsx"), "not a zip at all"), "no Excel workbook");
        assertRefused(Files.write(folder.resolve("empty.xlsx"), new byte[0]), "no Excel workbook");
        assertRefused(zip("other.xlsx", Map.of("readme.txt", "hello".getBytes(StandardCharsets.UTF_8))), "no Excel workbook");
        assertRefused(folder.resolve("missing.xlsx"), "no such file");
        assertRefused(folder, "it is a folder");
    }

    @Test
    void aTruncatedWorkbookIsToldInOneSentence() throws IOException {
        byte[] whole = Files.readAllBytes(workbook);
        for (int length : new int[] {10, whole.length / 2, whole.length - 5}) {
            assertRefused(Files.write(folder.resolve("cut.xlsx"), Arrays.copyOf(whole, length)), "cut short");
        }
    }

    @Test
    void aRecordThatWasTamperedWithIsRefused() throws IOException {
        Map<String, byte[]> parts = parts();
        String item = new String(parts.get(ITEM), StandardCharsets.UTF_8);
        String sum = Enclosures.sha256(HandMade.RECORD.bytes());
        parts.put(ITEM, item.replace(sum, sum.replace(sum.charAt(0), sum.charAt(0) == 'a' ? 'b' : 'a')).getBytes(StandardCharsets.UTF_8));
        assertRefused(zip("changed.xlsx", parts), "was changed");
        int start = item.indexOf('>', item.indexOf("sha256")) + 1;
        parts.put(ITEM, (item.substring(0, start) + "AAAA" + item.substring(start + 4)).getBytes(StandardCharsets.UTF_8));
        assertRefused(zip("damaged.xlsx", parts), "damaged");
        parts.put(ITEM, item.substring(0, start + 20).getBytes(StandardCharsets.UTF_8));
        assertRefused(zip("half.xlsx", parts), "damaged");
    }

    @Test
    void aPartThatUnpacksToFarMoreThanItIsWorthIsRefused() throws IOException {
        Map<String, byte[]> parts = parts();
        String head = "<g:record xmlns:g=\"" + Enclosures.NAMESPACE + "\" sha256=\"0\">";
        parts.put(ITEM, (head + " ".repeat(40_000_000) + "</g:record>").getBytes(StandardCharsets.UTF_8));
        assertRefused(zip("bomb.xlsx", parts), "unpacks to more than it can be worth");
    }

    @Test
    void aPartThatReachesForFilesIsRefused() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "c2VjcmV0");
        Map<String, byte[]> parts = parts();
        parts.put(ITEM, ("<!DOCTYPE x [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]><g:record xmlns:g=\"" + Enclosures.NAMESPACE
            + "\" sha256=\"0\">&e;</g:record>").getBytes(StandardCharsets.UTF_8));
        assertRefused(zip("reaching.xlsx", parts), "damaged");
    }

    private void assertRefused(Path file, String because) {
        assertThatThrownBy(() -> reader.readEnclosedFile(file)).isInstanceOf(WorkbookReadException.class).hasMessageContaining(because)
            .hasMessageContaining(file.getFileName().toString()).satisfies(refusal -> assertThat(refusal.getMessage()).doesNotContain("\n"));
    }

    private Map<String, byte[]> parts() throws IOException {
        var parts = new LinkedHashMap<String, byte[]>();
        try (var zip = new ZipFile(workbook.toFile())) {
            for (var entries = zip.entries(); entries.hasMoreElements();) {
                ZipEntry entry = entries.nextElement();
                parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        return parts;
    }

    private Path zip(String name, Map<String, byte[]> parts) throws IOException {
        Path made = folder.resolve(name);
        try (var zip = new ZipOutputStream(Files.newOutputStream(made))) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
            }
        }
        return made;
    }
}
