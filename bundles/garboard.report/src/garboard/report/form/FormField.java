// SPDX-License-Identifier: EPL-2.0
package garboard.report.form;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * One thing to measure, look at or answer.
 *
 * @param path the features that lead to it: from the record for a field that is there once, from the item for a field of a list
 */
public record FormField(List<EStructuralFeature> path) {

    public FormField {
        path = List.copyOf(path);
        if (!(path.getLast() instanceof EAttribute)) {
            throw new IllegalArgumentException("A field of the form ends at an attribute, not at " + path.getLast().getName());
        }
    }

    public EAttribute attribute() {
        return (EAttribute) path.getLast();
    }

    /** The path as it stands in keys: {@code siphonBreak.ventSeat.z}. */
    public String key() {
        return path.stream().map(EStructuralFeature::getName).collect(Collectors.joining("."));
    }
}
