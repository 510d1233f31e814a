// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.common.util.BasicEMap;
import org.eclipse.emf.common.util.EMap;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EFactory;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.ExtendedMetaData;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.XMLLoad;
import org.eclipse.emf.ecore.xmi.XMLSave;
import org.eclipse.emf.ecore.xmi.impl.XMIHelperImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;

import garboard.model.FieldText;
import garboard.model.GarboardPackage;

/**
 * The XMI form of one record. What the model does not know is kept beside the object where it was found
 * ({@link #getEObjectToExtensionMap()}) and written back there.
 */
final class RecordResource extends XMIResourceImpl {

    /** Namespaces that are declared where they are needed. */
    private static final Set<String> OWN = Set.of(GarboardPackage.eNS_URI, XMI_URI, ExtendedMetaData.XML_URI, RecordWriter.IDS);

    /** Names for what the model does not know are made up in here, for each file anew; a copy shares them. */
    private final ExtendedMetaData names;

    /** The end tag of the record as the file must write it, empty before the record begins and after it has ended. */
    private String endAwaited = "";

    /** Prefixes that the file declares for namespaces that are not ours; values may use them, so they are declared again. */
    private final EMap<String, String> prefixes = new BasicEMap<>();

    RecordResource(URI uri) {
        this(uri, new UnknownNames());
    }

    private RecordResource(URI uri, ExtendedMetaData names) {
        super(uri);
        this.names = names;
        // spoken for in every file, whatever unknown namespaces would like to be called
        prefixes.put(XMI_NS, XMI_URI);
        setIntrinsicIDToEObjectMap(new HashMap<>());
        Map<Object, Object> load = getDefaultLoadOptions();
        load.put(OPTION_USE_DEPRECATED_METHODS, Boolean.FALSE);
        load.put(OPTION_EXTENDED_META_DATA, names);
        load.put(OPTION_RECORD_UNKNOWN_FEATURE, Boolean.TRUE);
        load.put(OPTION_DEFER_IDREF_RESOLUTION, Boolean.TRUE);
        load.put(OPTION_DISABLE_NOTIFY, Boolean.TRUE);
        load.put(OPTION_USE_LEXICAL_HANDLER, Boolean.TRUE);
        Map<Object, Object> save = getDefaultSaveOptions();
        save.put(OPTION_EXTENDED_META_DATA, names);
        save.put(OPTION_ENCODING, "UTF-8");
        save.put(OPTION_LINE_DELIMITER, "\n");
    }

    /** {@return the names that stand for what the model does not know} A copy has the same as its original. */
    ExtendedMetaData names() {
        return names;
    }

    /** {@return another resource that holds a copy of everything in this one, also of what the model does not know} */
    RecordResource copy() {
        RecordResource twin = new RecordResource(getURI(), names);
        twin.prefixes.putAll(prefixes);
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        twin.getContents().addAll(copier.copyAll(getContents()));
        copier.copyReferences();
        getEObjectToExtensionMap().forEach((part, unknown) -> {
            if (copier.get(part) != null) {
                twin.getEObjectToExtensionMap().put(copier.get(part), EcoreUtil.copy(unknown));
            }
        });
        return twin;
    }

    /** {@return the end tag of the record while it is still to come, else empty} */
    String endAwaited() {
        return endAwaited;
    }

    void awaitEnd(String tag) {
        endAwaited = tag;
    }

    /** Takes note of a prefix that the file declares; where it declares one twice, the first namespace keeps it. */
    void declared(String prefix, String namespace) {
        boolean spokenFor = prefix.isEmpty() || prefixes.containsKey(prefix) || prefix.equals(GarboardPackage.eNS_PREFIX);
        if (!spokenFor && !OWN.contains(namespace)) {
            prefixes.put(prefix, namespace);
        }
    }

    @Override
    protected XMLLoad createXMLLoad() {
        return new RecordLoad(createXMLHelper());
    }

    @Override
    protected XMLSave createXMLSave() {
        XMLHelper helper = createXMLHelper();
        helper.setExtendedMetaData(names);
        helper.setPrefixToNamespaceMap(prefixes);
        return new RecordSave(helper);
    }

    @Override
    protected XMLHelper createXMLHelper() {
        return new XMIHelperImpl(this) {
            @Override
            protected Object createFromString(EFactory factory, EDataType type, String value) {
                return type.getEPackage() == GarboardPackage.eINSTANCE || type.getInstanceClass() == Integer.class
                    || type.getInstanceClass() == byte[].class ? FieldText.value(type, value).orElse(null)
                        : super.createFromString(factory, type, value);
            }
        };
    }
}
