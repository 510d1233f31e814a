// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

import garboard.model.testing.RandomRecords;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A damaged file is read whole or refused in one sentence; nothing else ever comes out. What was read is read again when saved. */
class BrokenBytesTest {

    private static final List<String> ELEMENTS = List.of("<a>", "</a>", "<vessel>", "<vessel/>", "<hoses/>", "<hoses bore='1 in'/>", "<practices/>",
        "<practices xsi:nil='true'/>", "<inspections photographs='#//x:y a b'/>", "<inspections photographs='photo-1 photo-1'/>", "text",
        "<x:y xmlns:x='java://java.lang.Runtime'/>", "<![CDATA[x]]>", "<!-- -->", "<?pi x?>", "<xmi:Extension><a/></xmi:Extension>",
        "<any/>", "<mixed/>", "<a xml:space='preserve'> </a>", "<a b:type='garboard:X' xmlns:b='urn:b'/>", "<vessel xmlns='urn:garboard:record:1'/>",
        "<garboard:vessel/>", "<rawWater><rawWater/></rawWater>", "<CommissioningRecord/>", "<a xsi:type='garboard:Point' x='1 m'/>",
        "<photographs id='photo-1' data=''/>", "<eContents/>", "<a href='file:/x#y'/>", "<a xmlns='urn:a'><b/></a>", "<a><![CDATA[<]]>&amp;<b/></a>");
    private static final List<String> ATTRIBUTES = List.of(" xsi:type='garboard:Point'", " xsi:type='garboard:Item'", " xsi:type='none'",
        " xsi:nil='true'", " href='#x'", " xmi:idref='x'", " xmi:id='x'", " xmi:uuid='x'", " xmlns='java://java.lang.Runtime'",
        " xmlns:a='urn:a:xmi' a:b='1'", " xmlns:a='urn:a:xsi' a:b='1'", " xml:lang='de'", " xmlns:garboard='urn:a'", " a:b='1'", " b='1'",
        " xmlns:xsi='http://www.w3.org/2001/XMLSchema-instance'", " xmlns:b='http://www.w3.org/2001/XMLSchema-instance' b:nil='true'",
        " xmlns:xmi='xmi:'", " xsi:schemaLocation='urn:garboard:record:1 http://127.0.0.1:9/'", " bore=''", " id=''", " id='a b'", " id='hose-1'",
        " data='0'", " practices='a b a'", " garboard:name='x'", " class='x'", " eClass='x'",
        " xmlns:a='urn:a?x=1&amp;y=&lt;' a:b='1'", " xmlns:a='urn:a:xmlns' a:b='1'", " xmlns:xml='http://www.w3.org/XML/1998/namespace'");
    private static final List<String> SPLINTERS = List.of("<", ">", "/", "\"", "'", "=", "&", ";", " ", "&#0;", "&lt;", "&unknown;", "xmi:",
        "\u0000");

    private Random random;

    @Property(tries = 1000)
    void aDamagedFileIsReadOrRefused(@ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int blows) throws Exception {
        random = new Random(seed);
        String text = new String(RecordFile.of(new RandomRecords(random, 10 + random.nextInt(20)).record()).toBytes(), StandardCharsets.UTF_8);
        for (int i = 0; i < blows; i++) {
            text = damaged(text);
        }
        RecordFile read;
        try {
            read = RecordFile.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "the file");
        } catch (RecordReadException refused) {
            assertThat(refused.getMessage()).startsWith("the file").doesNotContain("\n", "Exception", "org.eclipse", "com.sun");
            return;
        }
        byte[] saved = read.toBytes();
        assertThat(RecordFile.read(new ByteArrayInputStream(saved), "again").toBytes()).asString(StandardCharsets.UTF_8)
            .isEqualTo(new String(saved, StandardCharsets.UTF_8));
    }

    private String damaged(String text) {
        int from = random.nextInt(text.length() + 1);
        int end = text.indexOf('>', from);
        return switch (random.nextInt(4)) {
            case 0 -> text.substring(0, from) + one(SPLINTERS) + text.substring(from);
            case 1 -> text.substring(0, from) + text.substring(from + random.nextInt(text.length() - from + 1));
            case 2 -> text.substring(0, end + 1) + one(ELEMENTS) + text.substring(end + 1);
            default -> end < 1 ? text + one(ATTRIBUTES) : beforeEnd(text, text.charAt(end - 1) == '/' ? end - 1 : end);
        };
    }

    private String beforeEnd(String text, int end) {
        return text.substring(0, end) + one(ATTRIBUTES) + text.substring(end);
    }

    private String one(List<String> pieces) {
        return pieces.get(random.nextInt(pieces.size()));
    }
}
