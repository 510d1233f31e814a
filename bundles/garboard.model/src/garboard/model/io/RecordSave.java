// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.util.Map;

import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMISaveImpl;
import org.eclipse.emf.ecore.xmi.impl.XMLString;

/** Writes namespaces so that they can be read again: EMF puts them in as they are, also those with an ampersand. */
final class RecordSave extends XMISaveImpl {

    RecordSave(XMLHelper helper) {
        super(helper);
    }

    @Override
    protected void init(XMLResource resource, Map<?, ?> options) {
        super.init(resource, options);
        doc = new XMLString(Integer.MAX_VALUE) {
            private static final long serialVersionUID = 1L;

            @Override
            public void addAttributeNS(String prefix, String localName, String value) {
                super.addAttributeNS(prefix, localName, escape.convert(value));
            }
        };
        doc.setLineSeparator((String) options.get(Resource.OPTION_LINE_DELIMITER));
    }
}
