// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.util.Locale;
import java.util.Set;

import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.impl.EPackageRegistryImpl;
import org.eclipse.emf.ecore.util.BasicExtendedMetaData;
import org.eclipse.emf.ecore.util.ExtendedMetaData;

import garboard.model.GarboardPackage;

/**
 * Names for the elements and attributes of one file that the model does not know. EMF would keep what it has looked up on the shared
 * packages, where threads that read files at once meet; with an annotation URI that is another object it keeps it in here.
 */
final class UnknownNames extends BasicExtendedMetaData {

    /** Prefixes that have a meaning in every record file. */
    private static final Set<String> TAKEN = Set.of("xmi", "xsi", GarboardPackage.eNS_PREFIX);

    UnknownNames() {
        super(new String(ExtendedMetaData.ANNOTATION_URI), knownPackages());
    }

    /** No other prefix than that of xml:lang may begin with xml: "Namespaces in XML 1.0", section 3. */
    @Override
    protected String computePrefix(String namespace) {
        if (namespace.equals(ExtendedMetaData.XML_URI)) {
            return "xml";
        }
        String prefix = super.computePrefix(namespace);
        return TAKEN.contains(prefix) || prefix.toLowerCase(Locale.ROOT).startsWith("xml") ? "other" : prefix;
    }

    private static EPackage.Registry knownPackages() {
        EPackage.Registry known = new EPackageRegistryImpl();
        known.put(GarboardPackage.eNS_URI, GarboardPackage.eINSTANCE);
        return known;
    }
}
