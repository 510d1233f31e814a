// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import garboard.quantity.Quantity;

/**
 * What is entered in a field.
 *
 * @param given as the person gave it, choices in words
 * @param shown the same in the units of the report, for a quantity
 */
record FieldValue(String given, Optional<Figures.Shown> shown) {

    static FieldValue of(EObject part, EAttribute field, Material material) {
        Object value = part.eGet(field);
        return switch (value) {
            case Quantity<?> quantity -> new FieldValue(quantity.toString(), Optional.of(material.figures().shown(quantity, material.unit(field))));
            case Enumerator choice -> plain(material.labels().label(choice));
            case List<?> several -> plain(several.stream().map(String::valueOf).collect(Collectors.joining(", ")));
            case byte[] bytes -> plain(bytes.length + " bytes");
            case null -> plain("");
            default -> plain(value.toString());
        };
    }

    private static FieldValue plain(String text) {
        return new FieldValue(text, Optional.empty());
    }
}
