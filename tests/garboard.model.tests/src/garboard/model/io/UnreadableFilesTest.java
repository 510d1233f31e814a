// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnreadableFilesTest {

    @TempDir
    Path folder;

    private static void refused(String text, String sentence) {
        assertThatThrownBy(() -> RecordXml.read(text)).isInstanceOf(RecordReadException.class).hasMessage(sentence);
    }

    @Test
    void namesFileLineFieldWhatWasFoundAndWhatIsRightForAQuantity() {
        refused(RecordXml.of("<vessel/>\n<rawWater>\n  <hoses id=\"hose-2\" bore=\"38 furlongs\"/>\n</rawWater>"),
            "boat.garboard, line 4, cannot be read: Raw-water circuit › Hoses › hose-2 › Bore (rawWater.hoses[hose-2].bore): "
                + "length: \"38 furlongs\" - furlongs is not a unit of length; use mm, cm, m, in or ft");
    }

    @Test
    void namesTheChoicesForAnUnknownChoice() {
        refused(RecordXml.of("<fuelSupply><separator bowl=\"glass\"/></fuelSupply>"),
            "boat.garboard, line 2, cannot be read: Fuel supply › Fuel-water separator › Bowl (fuelSupply.separator.bowl): \"glass\" is none of "
                + "the choices; right would be one of not-entered, metal, clear-with-heat-shield, clear-without-shield");
    }

    @Test
    void namesWhatIsRightForNumbersDatesMomentsAndPictures() {
        refused(RecordXml.of("<vessel passengers=\"3.5\"/>"),
            "boat.garboard, line 2, cannot be read: Vessel › Passengers (vessel.passengers): \"3.5\" is no whole number; right would be, for "
                + "example, 4");
        refused(RecordXml.of("<vessel builtOn=\"31/12/24\"/>"),
            "boat.garboard, line 2, cannot be read: Vessel › Built on (vessel.builtOn): \"31/12/24\" is no date; right would be year-month-day, "
                + "for example 2026-05-31");
        refused(RecordXml.of("<trial><attempts id=\"attempt-1\" at=\"noon\"/></trial>"),
            "boat.garboard, line 2, cannot be read: Trial › Cranking attempts › attempt-1 › Time (trial.attempts[attempt-1].at): \"noon\" is no "
                + "date with time and offset; right would be, for example, 2026-05-31T14:05:00+02:00");
        refused(RecordXml.of("<photographs id=\"photo-1\" data=\"xyz\"/>"),
            "boat.garboard, line 2, cannot be read: Photographs › photo-1 › Picture (photographs[photo-1].data): \"xyz\" is no picture; right "
                + "would be pairs of hexadecimal digits");
    }

    @Test
    void refusesAReferenceToNothing() {
        refused(RecordXml.of("<inspections id=\"answer-1\" photographs=\"photo-9\"/>"),
            "boat.garboard, line 2, cannot be read: Inspection answers › answer-1 › Photographs (inspections[answer-1].photographs): \"photo-9\" "
                + "is the id of nothing in the record; right would be the id of an item that is there");
    }

    @Test
    void refusesAReferenceOutOfTheFile() {
        refused(RecordXml.of("<inspections><photographs href=\"http://127.0.0.1:9/x.garboard#photo-1\"/></inspections>"),
            "boat.garboard, line 2, cannot be read: it refers to \"http://127.0.0.1:9/x.garboard#photo-1\" outside the file; a record holds all "
                + "its parts itself");
    }

    @Test
    void refusesASinglePartThatIsThereTwice() {
        refused(RecordXml.of("<vessel name=\"One\"/>\n<vessel name=\"Two\"/>"),
            "boat.garboard, line 3, cannot be read: Vessel (vessel): it is there twice; right would be once");
    }

    @Test
    void refusesNil() {
        refused(RecordXml.of("<practices xsi:nil=\"true\"/>"),
            "boat.garboard, line 2, cannot be read: it marks a part as nil; right would be to leave the part out");
    }

    @Test
    void refusesAnEmptyFile() {
        refused("", "boat.garboard cannot be read: it is empty");
    }

    @ParameterizedTest
    @ValueSource(strings = { "Dear owner,\nthe hose is 2 in.", "{\"title\": 1}", "PK\u0003\u0004", "   " })
    void refusesWhatIsNotXml(String text) {
        refused(text, "boat.garboard cannot be read: it is no record, not even XML; choose a file that ends in .garboard");
    }

    @Test
    void refusesBinaryGarbage() {
        byte[] garbage = new byte[5000];
        new Random(7).nextBytes(garbage);
        assertThatThrownBy(() -> RecordXml.read(garbage)).isInstanceOf(RecordReadException.class)
            .hasMessage("boat.garboard cannot be read: it is no record, not even XML; choose a file that ends in .garboard");
    }

    @Test
    void refusesForeignXml() {
        refused("<html><body/></html>", "boat.garboard, line 1, cannot be read: it is no record: it begins with <html> where a record has "
            + "<garboard:CommissioningRecord>");
        refused("<garboard:Vessel " + RecordXml.HEAD + "/>", "boat.garboard, line 1, cannot be read: it is no record: it begins with "
            + "<garboard:Vessel> where a record has <garboard:CommissioningRecord>");
    }

    @Test
    void tellsThatTheFormOfANextGenerationNeedsANewerProgram() {
        refused(RecordXml.of("").replace("record:1", "record:2"), "boat.garboard, line 1, cannot be read: it is written in the form "
            + "urn:garboard:record:2 and this program reads urn:garboard:record:1; a newer program is needed");
    }

    @ParameterizedTest
    @ValueSource(ints = { 40, 20, 1 })
    void tellsThatAFileIsCutOff(int missing) {
        String whole = RecordXml.of("<vessel name=\"Whole\"/>").strip();
        assertThatThrownBy(() -> RecordXml.read(whole.substring(0, whole.length() - missing))).isInstanceOf(RecordReadException.class)
            .hasMessageMatching("boat.garboard cannot be read: it is cut off after line [23], the end of the record is missing");
    }

    @Test
    void tellsWhereXmlIsNotWellFormed() {
        refused(RecordXml.of("<vessel>"), "boat.garboard cannot be read: in line 3 it is not well-formed XML (The element type \"vessel\" must be "
            + "terminated by the matching end-tag \"</vessel>\")");
    }

    @Test
    void speaksOneLanguageWhateverTheComputerSpeaks() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            tellsWhereXmlIsNotWellFormed();
            namesFileLineFieldWhatWasFoundAndWhatIsRightForAQuantity();
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void tellsThatCharactersAreNotInTheEncodingClaimed() {
        byte[] latin = RecordXml.of("<vessel name=\"Größe\"/>").getBytes(StandardCharsets.ISO_8859_1);
        String sentence = "boat.garboard cannot be read: its characters are not in the encoding that it claims; right would be UTF-8";
        assertThatThrownBy(() -> RecordXml.read(latin)).isInstanceOf(RecordReadException.class).hasMessage(sentence);
        refused("<?xml version=\"1.0\" encoding=\"klingon\"?>" + RecordXml.of(""), sentence);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<!DOCTYPE r SYSTEM 'http://127.0.0.1:PORT/x.dtd'>",
        "<!DOCTYPE r [<!ENTITY x SYSTEM 'http://127.0.0.1:PORT/x'>]>",
        "<!DOCTYPE r [<!ENTITY % x SYSTEM 'http://127.0.0.1:PORT/x'> %x;]>",
        "<!DOCTYPE r [<!ENTITY x 'aaaaaaaaaa'><!ENTITY y '&x;&x;&x;&x;&x;&x;&x;&x;'><!ENTITY z '&y;&y;&y;&y;&y;&y;&y;&y;'>]>" })
    void refusesADoctypeAndFetchesNothing(String doctype) throws IOException {
        try (ServerSocket elsewhere = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            elsewhere.setSoTimeout(1);
            String text = doctype.replace("PORT", String.valueOf(elsewhere.getLocalPort())) + "\n" + RecordXml.of("<vessel name=\"&x;\"/>");
            refused(text, "boat.garboard, line 1, cannot be read: it has a DOCTYPE, through which a file can pull in others; a record file has none");
            // an asked-for connection would wait in the queue of the socket
            assertThatThrownBy(elsewhere::accept).isInstanceOf(SocketTimeoutException.class);
        }
    }

    @Test
    void refusesElementsNestedWithoutEnd() {
        int deep = 100_000;
        refused(RecordXml.of("<a>".repeat(deep) + "</a>".repeat(deep)),
            "boat.garboard, line 2, cannot be read: its elements are nested more than 100 deep; those of a record are not");
    }

    @Test
    void refusesMoreThanARecordCanBe() {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return ' ';
            }

            @Override
            public int read(byte[] into, int from, int length) {
                Arrays.fill(into, from, from + length, (byte) ' ');
                return length;
            }
        };
        assertThatThrownBy(() -> RecordFile.read(endless, "the stream")).isInstanceOf(RecordReadException.class)
            .hasMessage("the stream cannot be read: it is larger than 256 MiB, and no record is");
    }

    @Test
    void refusesAFolderAndAFileThatIsNotThere() {
        assertThatThrownBy(() -> RecordFile.open(folder)).isInstanceOf(RecordReadException.class)
            .hasMessage(folder + " cannot be read: it is a folder; choose a record file in it");
        Path nowhere = folder.resolve("nowhere.garboard");
        assertThatThrownBy(() -> RecordFile.open(nowhere)).isInstanceOf(RecordReadException.class)
            .hasMessage(nowhere + " cannot be read: there is no such file");
    }

    @Test
    void namesTheFileThatWasOpened() throws IOException {
        Path file = folder.resolve("boat.garboard");
        Files.writeString(file, RecordXml.of("<vessel beam=\"wide\"/>"));
        assertThatThrownBy(() -> RecordFile.open(file)).isInstanceOf(RecordReadException.class)
            .hasMessageStartingWith(file + ", line 2, cannot be read: Vessel › Beam (vessel.beam): length: \"wide\"");
    }

    @Test
    void aBrokenStreamIsTold() {
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("the card was pulled out");
            }
        };
        assertThatThrownBy(() -> RecordFile.read(broken, "the stream")).isInstanceOf(RecordReadException.class)
            .hasMessage("the stream cannot be read: the card was pulled out");
    }

    @Test
    void aLongWrongTextIsNotRepeatedWhole() {
        assertThatThrownBy(() -> RecordXml.read(RecordXml.of("<vessel beam=\"" + "x".repeat(100_000) + "\"/>")))
            .isInstanceOf(RecordReadException.class)
            .satisfies(refused -> assertThat(refused.getMessage()).hasSizeLessThan(300).contains("is too long"));
    }
}
