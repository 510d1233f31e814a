// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What would make the check meet.
 *
 * @param text one or two sentences with the computed figure in them
 * @param changes what to change in the record to see it met; empty when it is work on board that no figure describes
 */
public record Remedy(String text, List<Change> changes) {

    /** One feature of one object set to a new value. */
    public record Change(EObject target, EStructuralFeature feature, Object value) {
        public Change {
            Objects.requireNonNull(target, "target");
            Objects.requireNonNull(feature, "feature");
            Objects.requireNonNull(value, "value");
        }
    }

    public Remedy {
        if (text == null || text.isBlank()) {
            throw new IllegalArgumentException("A remedy says in words what to do");
        }
        changes = List.copyOf(changes);
    }

    public static Remedy of(String text) {
        return new Remedy(text, List.of());
    }

    /** The same remedy with one more change to the record. */
    public Remedy setting(EObject target, EStructuralFeature feature, Object value) {
        var more = new ArrayList<>(changes);
        more.add(new Change(target, feature, value));
        return new Remedy(text, more);
    }
}
