// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.util.Locale;

import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;

import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.impl.XMILoadImpl;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Sets up the parser so that it fetches nothing and expands nothing, and has its own handler told what it finds. */
final class RecordLoad extends XMILoadImpl {

    private static final String SAX = "http://xml.org/sax/features/";
    private static final String XERCES = "http://apache.org/xml/";

    RecordLoad(XMLHelper helper) {
        super(helper);
    }

    @Override
    protected SAXParser makeParser() throws ParserConfigurationException, SAXException {
        // the parser of the JDK, whatever else lies about on the class path
        SAXParserFactory factory = SAXParserFactory.newDefaultNSInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        // a DOCTYPE is refused by the handler before any of this matters; twice is safer than once
        factory.setFeature(SAX + "external-general-entities", false);
        factory.setFeature(SAX + "external-parameter-entities", false);
        factory.setFeature(XERCES + "features/nonvalidating/load-external-dtd", false);
        SAXParser parser = factory.newSAXParser();
        parser.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        parser.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
        // limits of our own, for those of the JDK change from release to release; the depth is the handler's
        parser.setProperty("jdk.xml.maxElementDepth", "0");
        parser.setProperty("jdk.xml.elementAttributeLimit", "1000");
        // ROOT, for the messages in English have no locale of their own and ENGLISH would fall back to the language of the computer
        parser.setProperty(XERCES + "properties/locale", Locale.ROOT);
        return parser;
    }

    @Override
    protected DefaultHandler makeDefaultHandler() {
        return new RecordHandler((RecordResource) resource, helper, options);
    }
}
