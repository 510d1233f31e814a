// SPDX-License-Identifier: EPL-2.0
package garboard.house;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Who may see whom. The same table stands in DEVELOPERS.md; an arrow that is not here is not allowed. */
final class Arrows {

    /**
     * @param own the bundles of this project that may be named
     * @param libraries how the names of the bundles or packages of others may begin; the JDK's packages are free
     */
    record Sight(Set<String> own, List<String> libraries) {

        boolean allows(String name) {
            return own.contains(name) || !name.startsWith("garboard.") && (isJdk(name) || begins(name));
        }

        private boolean begins(String name) {
            return libraries.stream().anyMatch(start -> name.equals(start) || name.startsWith(start + "."));
        }

        private static boolean isJdk(String name) {
            return List.of("java.", "javax.crypto", "javax.imageio", "javax.xml", "org.w3c.dom", "org.xml.sax").stream().anyMatch(name::startsWith);
        }
    }

    static final Map<String, Sight> TABLE = Map.ofEntries(
            entry("garboard.quantity", Set.of(), "javax.measure", "tech.units", "tech.uom", "uom-lib-common"),
            entry("garboard.physics", Set.of("garboard.quantity"), "org.hipparchus"),
            entry("garboard.model", Set.of("garboard.quantity"), "org.eclipse.emf"),
            entry("garboard.model.edit", Set.of("garboard.model"), "org.eclipse.emf", "org.eclipse.core.runtime"),
            // The registry carries the extension point through which a plug-in contributes a practice.
            entry("garboard.checks", Set.of("garboard.model", "garboard.quantity"), "org.eclipse.equinox.common", "org.eclipse.equinox.registry"),
            entry("garboard.practice", Set.of("garboard.checks", "garboard.physics", "garboard.model", "garboard.quantity"),
                    "org.apache.commons.commons-csv", "org.apache.commons.csv"),
            entry("garboard.practice.sample", Set.of("garboard.checks", "garboard.model", "garboard.quantity")),
            entry("garboard.trial", Set.of("garboard.checks", "garboard.physics", "garboard.model", "garboard.quantity"),
                    "org.apache.commons.commons-csv", "org.apache.commons.csv", "com.google.gson"),
            entry("garboard.report",
                    Set.of("garboard.checks", "garboard.trial", "garboard.physics", "garboard.model", "garboard.quantity")),
            entry("garboard.report.excel", Set.of("garboard.report", "garboard.checks", "garboard.model", "garboard.quantity"),
                    // Commons Compress is what POI writes its zip with; it wants Commons Lang, but its manifest calls that optional.
                    "org.apache.poi", "org.apache.xmlbeans", "org.apache.commons.commons-compress", "org.apache.commons.lang3"),
            entry("garboard.console",
                    Set.of("garboard.quantity", "garboard.physics", "garboard.model", "garboard.checks", "garboard.practice", "garboard.trial",
                            "garboard.report", "garboard.report.excel", "garboard.examples"),
                    "com.google.gson", "picocli", "org.eclipse.equinox", "org.osgi.framework"),
            entry("garboard.session",
                    Set.of("garboard.report", "garboard.checks", "garboard.trial", "garboard.physics", "garboard.model", "garboard.model.edit",
                            "garboard.quantity"),
                    "org.eclipse.emf"),
            entry("garboard.workbench",
                    Set.of("garboard.session", "garboard.report", "garboard.report.excel", "garboard.checks", "garboard.trial", "garboard.physics",
                            "garboard.model", "garboard.model.edit", "garboard.quantity", "garboard.examples"),
                    "org.eclipse.core.runtime", "org.eclipse.swt", "org.eclipse.jface", "org.eclipse.e4", "org.eclipse.swtchart", "jakarta",
                    "org.osgi.framework", "org.osgi.service"),
            entry("garboard.examples", Set.of("garboard.model")));

    private Arrows() {
    }

    private static Map.Entry<String, Sight> entry(String bundle, Set<String> own, String... libraries) {
        return Map.entry(bundle, new Sight(own, List.of(libraries)));
    }
}
