// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.LinkedHashSet;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What one edit, undo or redo touched.
 *
 * @param touched each field that has a new content; a list or a part when something was added to it or taken away
 */
public record RecordChange(Set<Touched> touched) {

    /** One field of one part. */
    public record Touched(EObject owner, EStructuralFeature feature) {
    }

    public RecordChange {
        touched = Set.copyOf(touched);
    }

    /** {@return whether parts or items came, went or moved, so that more than single values must be shown anew} */
    public boolean structural() {
        return touched.stream().anyMatch(one -> one.feature() instanceof org.eclipse.emf.ecore.EReference);
    }

    /** {@return the features that were touched, whatever part they are of} */
    public Set<EStructuralFeature> features() {
        var features = new LinkedHashSet<EStructuralFeature>();
        touched.forEach(one -> features.add(one.feature()));
        return features;
    }

    /** {@return whether a field has, or may have, a new content} */
    public boolean concerns(Field field) {
        return structural() || touched.stream().anyMatch(one -> field.isPlace(one.owner(), one.feature()));
    }
}
