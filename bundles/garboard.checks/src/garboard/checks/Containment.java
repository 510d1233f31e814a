// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;

import garboard.model.GarboardPackage;

/**
 * How the parts of a record hang together, read once from the Ecore model: for each class the chains of containment
 * references that lead to it from the root. Immutable.
 */
final class Containment {

    /** Chains from the root to a class; single when every reference in the chain is single-valued. */
    record Chain(List<EReference> references) {
        boolean single() {
            return references.stream().noneMatch(EReference::isMany);
        }
    }

    private final Map<EClass, List<Chain>> chains = new HashMap<>();

    Containment() {
        collect(GarboardPackage.Literals.COMMISSIONING_RECORD, List.of(), new HashSet<>());
    }

    private void collect(EClass owner, List<EReference> soFar, Set<EClass> above) {
        chains.computeIfAbsent(owner, key -> new ArrayList<>()).add(new Chain(List.copyOf(soFar)));
        if (!above.add(owner)) {
            return;
        }
        for (EReference reference : owner.getEAllContainments()) {
            var next = new ArrayList<>(soFar);
            next.add(reference);
            collect(reference.getEReferenceType(), next, above);
        }
        above.remove(owner);
    }

    /** All chains from the record to objects of this very class. */
    List<Chain> to(EClass type) {
        return chains.getOrDefault(type, List.of());
    }

    /** The one chain of single-valued references to the class, as for the vessel or the siphon break. */
    List<EReference> onlySingleChain(EClass type) {
        List<Chain> single = to(type).stream().filter(Chain::single).toList();
        if (single.size() != 1) {
            throw new IllegalArgumentException(
                    type.getName() + " is not a part that a record has exactly once; name the path from the subject");
        }
        return single.getFirst().references();
    }
}
