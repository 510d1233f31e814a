// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.ExtendedMetaData;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.impl.SAXXMIHandler;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;

import garboard.model.GarboardPackage;

/**
 * Builds the record while the file is parsed. Beyond what EMF does: a file that is no record is refused at its first element,
 * references lead nowhere outside the file, no class is loaded on a file's word, and parts of an unknown type are kept whole.
 */
final class RecordHandler extends SAXXMIHandler {

    private static final int DEEPEST = 100;

    private final RecordResource resource;
    private int depth;

    RecordHandler(RecordResource resource, XMLHelper helper, Map<?, ?> options) {
        super(resource, helper, options);
        this.resource = resource;
    }

    @Override
    public void startDTD(String name, String publicId, String systemId) {
        throw new Refusal(getLineNumber(), "it has a DOCTYPE, through which a file can pull in others; a record file has none");
    }

    @Override
    public void startElement(String uri, String localName, String name, Attributes attributes) throws SAXException {
        if (depth == 0) {
            expectRecord(uri, localName, name);
            resource.awaitEnd("</" + name + ">");
        }
        if (++depth > DEEPEST) {
            throw new Refusal(getLineNumber(), "its elements are nested more than " + DEEPEST + " deep; those of a record are not");
        }
        super.startElement(uri, localName, name, attributes);
    }

    @Override
    public void endElement(String uri, String localName, String name) {
        super.endElement(uri, localName, name);
        if (--depth == 0) {
            resource.awaitEnd("");
        }
    }

    private void expectRecord(String uri, String localName, String name) {
        if (uri.equals(GarboardPackage.eNS_URI) && localName.equals(GarboardPackage.Literals.COMMISSIONING_RECORD.getName())) {
            return;
        }
        String ours = GarboardPackage.eNS_URI.substring(0, GarboardPackage.eNS_URI.lastIndexOf(':') + 1);
        if (uri.startsWith(ours) && !uri.equals(GarboardPackage.eNS_URI)) {
            throw new Refusal(getLineNumber(), "it is written in the form " + uri + " and this program reads " + GarboardPackage.eNS_URI
                + "; a newer program is needed");
        }
        throw new Refusal(getLineNumber(), "it is no record: it begins with <" + name + "> where a record has <garboard:CommissioningRecord>");
    }

    @Override
    public void startPrefixMapping(String prefix, String uri) {
        super.startPrefixMapping(prefix, uri);
        resource.declared(prefix, uri);
    }

    /** An element of a type that the model does not have at this place is kept like an element of an unknown name. */
    @Override
    protected void createObject(EObject owner, EStructuralFeature feature) {
        String type = getXSIType();
        if (type != null && !knows(type, feature)) {
            recordUnknownFeature("", feature.getName(), true, owner, null);
        } else {
            super.createObject(owner, feature);
        }
    }

    private boolean knows(String type, EStructuralFeature feature) {
        int colon = type.indexOf(':');
        boolean ours = GarboardPackage.eNS_URI.equals(helper.getURI(colon < 0 ? "" : type.substring(0, colon)));
        return ours && GarboardPackage.eINSTANCE.getEClassifier(type.substring(colon + 1)) instanceof EClass known && !known.isAbstract()
            && feature instanceof EReference reference && reference.getEReferenceType().isSuperTypeOf(known);
    }

    @Override
    protected String getXSIType() {
        return objects.peekEObject() instanceof AnyType ? null : super.getXSIType();
    }

    /** No value of ours is nil; on unknown elements xsi:nil is an attribute like any other. */
    @Override
    protected boolean isNull() {
        if (super.isNull() && !(objects.peekEObject() instanceof AnyType)) {
            throw new Refusal(getLineNumber(), "it marks a part as nil; right would be to leave the part out");
        }
        return false;
    }

    /** On unknown elements no attribute means anything to us: all are kept, xsi:type and href among them. */
    @Override
    protected void handleObjectAttribs(EObject object) {
        if (!(object instanceof AnyType unknown)) {
            super.handleObjectAttribs(object);
            return;
        }
        for (int i = 0; attribs != null && i < attribs.getLength(); i++) {
            unknown.getAnyAttribute().add(nameOf(attribs.getURI(i), attribs.getLocalName(i)), valueOf(attribs.getURI(i), attribs.getValue(i)));
        }
    }

    private EStructuralFeature nameOf(String namespace, String name) {
        return extendedMetaData.demandFeature(namespace.isEmpty() ? null : namespace, name, false);
    }

    /** The value of xsi:type begins with a prefix; for our namespace it must be the one that we declare when we write. */
    private String valueOf(String namespace, String value) {
        int colon = namespace.equals(ExtendedMetaData.XSI_URI) ? value.indexOf(':') : -1;
        return colon > 0 && GarboardPackage.eNS_URI.equals(helper.getURI(value.substring(0, colon)))
            ? GarboardPackage.eNS_PREFIX + value.substring(colon) : value;
    }

    @Override
    protected void setFeatureValue(EObject object, EStructuralFeature feature, Object value, int position) {
        boolean second = feature instanceof EReference reference && reference.isContainment() && !reference.isMany() && object.eIsSet(feature)
            && !(object instanceof AnyType);
        if (second) {
            error(new IllegalValueException(object, feature, value,
                new IllegalArgumentException("it is there twice; right would be once"), getLocation(), getLineNumber(), getColumnNumber()));
        } else {
            super.setFeatureValue(object, feature, value, position);
        }
    }

    @Override
    protected void handleProxy(InternalEObject proxy, String uri) {
        throw new Refusal(getLineNumber(), "it refers to \"" + uri + "\" outside the file; a record holds all its parts itself");
    }

    /** EMF would look for a package elsewhere, even load a class that the file names. */
    @Override
    protected EPackage getPackageForURI(String uri) {
        return uri == null ? null : GarboardPackage.eNS_URI.equals(uri) ? GarboardPackage.eINSTANCE : extendedMetaData.demandPackage(uri);
    }
}
