// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;

/** Collects the practices that plug-ins contribute through the extension point {@value #POINT}. */
public final class PracticeExtensions {

    /** Id of the extension point. */
    public static final String POINT = "garboard.checks.practices";

    private PracticeExtensions() {
    }

    /**
     * The practices of all installed plug-ins, in the order of their {@code rank} attribute.
     *
     * @throws IllegalStateException when a contribution cannot be made, naming the plug-in: a practice that is missing
     *         without a word would make an installation look better than it is
     */
    public static List<Practice> practices(IExtensionRegistry registry) {
        var elements = new ArrayList<>(List.of(registry.getConfigurationElementsFor(POINT)));
        elements.sort((a, b) -> Integer.compare(rank(a), rank(b)));
        var practices = new ArrayList<Practice>();
        for (IConfigurationElement element : elements) {
            try {
                practices.add((Practice) element.createExecutableExtension("class"));
            } catch (CoreException | ClassCastException fault) {
                throw new IllegalStateException("The practice \"" + element.getAttribute("class") + "\" of plug-in "
                        + element.getContributor().getName() + " cannot be made: " + fault.getMessage(), fault);
            }
        }
        return practices;
    }

    private static int rank(IConfigurationElement element) {
        String rank = element.getAttribute("rank");
        return rank == null ? Integer.MAX_VALUE : Integer.parseInt(rank);
    }
}
