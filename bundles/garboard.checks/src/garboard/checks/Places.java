// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.Item;

/** Places in a record that may not exist yet: an existing owner and the features below it that are not reached. */
final class Places {

    private Places() {
    }

    /** Stable key, for example {@code rawWater.siphonBreak.ventSeat.z}. */
    static String key(EObject owner, List<EStructuralFeature> rest) {
        var key = new StringBuilder(ownerKey(owner));
        rest.forEach(feature -> key.append(key.isEmpty() ? "" : ".").append(feature.getName()));
        return key.toString();
    }

    private static String ownerKey(EObject owner) {
        EObject container = owner.eContainer();
        if (container == null) {
            return "";
        }
        String above = ownerKey(container);
        String step = owner.eContainingFeature().getName();
        if (owner.eContainingFeature().isMany()) {
            step += "[" + (owner instanceof Item item && item.getId() != null ? item.getId()
                    : ((List<?>) container.eGet(owner.eContainingFeature())).indexOf(owner)) + "]";
        }
        return above.isEmpty() ? step : above + "." + step;
    }

    /** The same in words. */
    static String label(EObject owner, List<EStructuralFeature> rest) {
        return key(owner, rest);
    }
}
