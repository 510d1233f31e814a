// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.Item;

/** An element of a list in one line. */
final class SmallPart {

    private static final List<String> NAMES = List.of("name", "label", "caption", "location", "kind", "role");

    private SmallPart() {
    }

    /** {@return what the element is called: its name where it has one, else its kind, else its id} */
    static String name(EObject part, Material material) {
        for (String name : NAMES) {
            EStructuralFeature feature = part.eClass().getEStructuralFeature(name);
            if (feature instanceof EAttribute attribute && part.eIsSet(attribute)) {
                return FieldValue.of(part, attribute, material).given();
            }
        }
        return Optional.of(part).filter(Item.class::isInstance).map(item -> ((Item) item).getId())
            .orElseGet(() -> material.labels().label(part.eClass()));
    }

    /** {@return all that is entered in it} */
    static String words(EObject part, Material material) {
        return ParticularsSheet.fields(part.eClass()).stream().filter(part::eIsSet)
            .map(field -> material.labels().label(field) + ": " + FieldValue.of(part, field, material).given())
            .collect(Collectors.joining("; "));
    }
}
