// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;

import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

import garboard.model.testing.RandomRecords;
import garboard.model.testing.RandomValues;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What a newer program wrote and this one does not know is still there after loading and saving. */
class UnknownContentTest {

    @Test
    void keepsUnknownAttributesAndElementsAtAnyDepth() throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("""
            <rawWater weather="fair &amp; calm">
              <hoses id="hose-1" bore="1 in" colour="red"><label at="both ends"><line n="1">a<b/>c</line><line n="2"/></label></hoses>
            </rawWater>
            <upkeep><tasks id="task-1"><reminder/></tasks></upkeep>"""));
        file.record().getRawWater().getHoses().getFirst().setName("edited");

        String saved = RecordXml.saved(file);

        assertThat(saved).contains("<rawWater weather=\"fair &amp; calm\">", "id=\"hose-1\" name=\"edited\" bore=\"1 in\" colour=\"red\"",
            "<label at=\"both ends\"><line n=\"1\">a<b/>c</line><line n=\"2\"/></label>", "<reminder/>");
        assertThat(RecordXml.saved(RecordXml.read(saved))).isEqualTo(saved);
    }

    @Test
    void keepsPartsOfAnUnknownTypeWhole() throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("""
            <rawWater>
              <hoses id="hose-1"/>
              <hoses xsi:type="garboard:BellowsRun" id="hose-2" bore="1 in"><fittings kind="tee-run"/></hoses>
              <siphonBreak xsi:type="other:Break" xmlns:other="urn:other" height="1"/>
            </rawWater>"""));

        assertThat(file.record().getRawWater().getHoses()).hasSize(1);
        assertThat(file.record().getRawWater().getSiphonBreak()).isNull();
        String saved = RecordXml.saved(file);
        assertThat(saved).contains("<hoses xsi:type=\"garboard:BellowsRun\" id=\"hose-2\" bore=\"1 in\"><fittings kind=\"tee-run\"/></hoses>",
            "<siphonBreak xsi:type=\"other:Break\" height=\"1\"/>", "xmlns:other=\"urn:other\"");
        assertThat(RecordXml.saved(RecordXml.read(saved))).isEqualTo(saved);
    }

    @Test
    void keepsTypesOfOurNamespaceUnderAnotherPrefix() throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("<rawWater><hoses xsi:type=\"garboard:BellowsRun\"/></rawWater>").replace("garboard:Co", "g:Co")
            .replace("garboard:Be", "g:Be").replace("xmlns:garboard", "xmlns:g"));

        assertThat(RecordXml.saved(file)).contains("xmlns:garboard=\"urn:garboard:record:1\"", "<hoses xsi:type=\"garboard:BellowsRun\"/>");
    }

    @Test
    void knowsATypeThatItDoesKnow() throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("<rawWater><hoses xsi:type=\"garboard:WaterHoseRun\" bore=\"1 in\"/></rawWater>"));

        assertThat(file.record().getRawWater().getHoses().getFirst().getBore()).hasToString("1 in");
        assertThat(RecordXml.saved(file)).doesNotContain("xsi:type");
    }

    @ParameterizedTest
    @ValueSource(strings = { "xmi", "xsi", "xml", "xmlns", "XMLish", "garboard", "ids", "1", "größe", "a b", "x?a=1&amp;b=2", "&lt;&quot;&#10;" })
    void anUnknownNamespaceOfAnyNameDoesNotSpoilTheFile(String name) throws Exception {
        String text = RecordXml.of("<vessel xmlns:a=\"urn:a:" + name + "\" a:b=\"1\"><c xmlns=\"urn:c:" + name + "\"/></vessel>");

        String saved = RecordXml.saved(RecordXml.read(text));

        assertThat(RecordXml.saved(RecordXml.read(saved))).isEqualTo(saved);
        assertThat(elements(saved)).isEqualTo(elements(text)).hasSize(3);
    }

    @ParameterizedTest
    @ValueSource(strings = { "", " xmlns:xml=\"http://www.w3.org/XML/1998/namespace\"" })
    void keepsTheLanguageOfATextAndItsSpaces(String declaration) throws Exception {
        String text = RecordXml.of("<vessel" + declaration + " xml:lang=\"de\">"
            + "<a xml:space=\"preserve\" xml:lang=\"fr\"> <b xml:lang=\"en\"/> </a></vessel>");

        String saved = RecordXml.saved(RecordXml.read(text));

        assertThat(RecordXml.saved(RecordXml.read(saved))).isEqualTo(saved).contains("<vessel xml:lang=\"de\">",
            "<a xml:space=\"preserve\" xml:lang=\"fr\"> <b xml:lang=\"en\"/> </a>");
    }

    @ParameterizedTest
    @ValueSource(strings = { "http://schema.omg.org/spec/XMI/2.1", "http://www.omg.org/spec/XMI/20131001", "urn:other" })
    void takesOtherVersionsOfXmi(String namespace) throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("<vessel name=\"A\" xmi:id=\"_1\"/>").replace("http://www.omg.org/XMI", namespace));

        String saved = RecordXml.saved(file);

        assertThat(file.record().getVessel().getName()).isEqualTo("A");
        assertThat(saved).contains("xmlns:xmi=\"http://www.omg.org/XMI\"");
        assertThat(RecordXml.saved(RecordXml.read(saved))).isEqualTo(saved);
    }

    @Test
    void doesNotWriteWhatWouldNotOpenAgain() throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("<vessel x=\"1\"/>"));
        RecordResource resource = (RecordResource) file.resource();
        resource.getEObjectToExtensionMap().get(file.record().getVessel()).getAnyAttribute()
            .add(resource.names().demandFeature(null, "no name", false), "1");

        assertThatThrownBy(file::toBytes).isInstanceOf(RecordWriteException.class)
            .hasMessageStartingWith("The record cannot be written: with what another program left in it, what would be written cannot be read: ");
    }

    @Test
    void filesReadAtOnceDoNotMixTheirUnknownParts() throws Exception {
        String one = RecordXml.of("<vessel a=\"1\"><x y=\"2\"/></vessel>");
        String two = RecordXml.of("<vessel b=\"1\"><x z=\"2\"/></vessel>");
        List<Thread> threads = new ArrayList<>();
        List<Throwable> failures = new CopyOnWriteArrayList<>();
        for (String text : List.of(one, two, one, two)) {
            Thread thread = new Thread(() -> {
                for (int i = 0; i < 30; i++) {
                    try {
                        assertThat(elements(RecordXml.saved(RecordXml.read(text)))).containsAll(elements(text));
                    } catch (Throwable failed) {
                        failures.add(failed);
                    }
                }
            });
            threads.add(thread);
            thread.start();
        }
        for (Thread thread : threads) {
            thread.join();
        }
        assertThat(failures).isEmpty();
    }

    @Property(tries = 100)
    void whateverIsStrewnIntoARecordSurvives(@ForAll long seed) throws Exception {
        Random random = new Random(seed);
        Document record = parsed(RecordXml.saved(RecordFile.of(new RandomRecords(random, 15).record())));
        new Strewing(random).into(record.getDocumentElement());
        String strewn = written(record);

        String saved = RecordXml.saved(RecordXml.read(strewn));

        assertThat(elements(saved)).containsExactlyInAnyOrderElementsOf(elements(strewn));
        assertThat(RecordXml.saved(RecordXml.read(saved))).isEqualTo(saved);
    }

    private static Document parsed(String xml) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
        factory.setCoalescing(true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }

    private static String written(Document document) throws Exception {
        StringWriter text = new StringWriter();
        TransformerFactory.newDefaultInstance().newTransformer().transform(new DOMSource(document), new StreamResult(text));
        return text.toString();
    }

    /** Every element with its attributes and the text in it, wherever it stands. */
    private static List<String> elements(String xml) throws Exception {
        List<String> elements = new ArrayList<>();
        add(parsed(xml).getDocumentElement(), elements);
        return elements;
    }

    private static void add(Element element, List<String> elements) {
        Map<String, String> attributes = new TreeMap<>();
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            Node attribute = element.getAttributes().item(i);
            if (!XMLConstants.XMLNS_ATTRIBUTE_NS_URI.equals(attribute.getNamespaceURI())) {
                attributes.put(name(attribute), attribute.getNodeValue());
            }
        }
        StringBuilder text = new StringBuilder();
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element below) {
                add(below, elements);
            } else if (child.getNodeType() == Node.TEXT_NODE && !child.getNodeValue().isBlank()) {
                text.append(child.getNodeValue());
            }
        }
        elements.add(name(element) + " " + attributes + text);
    }

    private static String name(Node node) {
        return (node.getNamespaceURI() == null ? "" : "{" + node.getNamespaceURI() + "}") + node.getLocalName();
    }

    /** Puts unknown attributes and elements at random places of a record. */
    private static final class Strewing {

        private final Random random;
        private final RandomValues values;

        Strewing(Random random) {
            this.random = random;
            this.values = new RandomValues(random);
        }

        void into(Element part) {
            for (Node child = part.getFirstChild(); child != null; child = child.getNextSibling()) {
                // practices are plain texts, not parts
                if (child instanceof Element below && !below.getLocalName().equals("practices")) {
                    into(below);
                }
            }
            some(2, () -> attribute(part));
            some(2, () -> part.insertBefore(element(part.getOwnerDocument(), 0), part.getFirstChild()));
        }

        private Element element(Document document, int depth) {
            Element element = random.nextInt(3) == 0 ? document.createElementNS("urn:other:" + random.nextInt(3), "o" + random.nextInt(2) + ":new")
                : document.createElementNS(null, List.of("new", "any", "mixed", "eContents", "newHoses").get(random.nextInt(5)));
            some(3, () -> attribute(element));
            some(3, () -> element.appendChild(document.createTextNode(values.text())));
            some(depth < 4 ? 3 : 0, () -> element.appendChild(element(document, depth + 1)));
            some(2, () -> element.appendChild(document.createTextNode(values.text())));
            return element;
        }

        private void attribute(Element element) {
            if (random.nextInt(3) == 0) {
                element.setAttributeNS("urn:attributes:" + random.nextInt(3), "a" + random.nextInt(2) + ":new", values.text());
            } else {
                element.setAttributeNS(null, "new" + random.nextInt(5), values.text());
            }
        }

        private void some(int most, Runnable action) {
            for (int i = most == 0 ? 0 : random.nextInt(most); i > 0; i--) {
                action.run();
            }
        }
    }
}
