// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import garboard.model.Labels;
import garboard.quantity.Quantity;

/** Enters what a cell says into a field of the record, and leaves alone what the cell does not change. */
final class FieldValues {

    private final FieldEntry entry;

    FieldValues(Labels labels) {
        this.entry = new FieldEntry(labels);
    }

    /** @throws EntryException when the text is no value of the field */
    void enter(EObject owner, EAttribute attribute, Optional<String> text, Optional<String> unit) {
        if (text.isEmpty()) {
            clear(owner, attribute);
        } else if (attribute.isMany()) {
            enterLines(owner, attribute, text.get());
        } else if (attribute.getEAttributeType().getInstanceClass() == String.class) {
            enterText(owner, attribute, text.get());
        } else {
            Object value = entry.value(attribute, text.get(), unit);
            if (!same(owner.eGet(attribute), value)) {
                owner.eSet(attribute, value);
            }
        }
    }

    /** A text of blanks looks empty in a cell; it is no entry that a person could have emptied. */
    private static void clear(EObject owner, EAttribute attribute) {
        boolean looksEmpty = attribute.isMany() ? ((List<?>) owner.eGet(attribute)).stream().allMatch(line -> line.toString().isBlank())
            : owner.eGet(attribute) instanceof String text && text.isBlank();
        if (!looksEmpty) {
            owner.eUnset(attribute);
        }
    }

    private static void enterText(EObject owner, EAttribute attribute, String text) {
        Object existing = owner.eGet(attribute);
        boolean unchanged = text.equals(FormReader.TOO_LONG) || existing != null && CellText.normal(existing.toString()).equals(CellText.normal(text));
        if (!unchanged) {
            owner.eSet(attribute, CellText.normal(text));
        }
    }

    private static void enterLines(EObject owner, EAttribute attribute, String text) {
        @SuppressWarnings("unchecked") // the model's only lists of attributes are lists of texts
        var lines = (List<String>) owner.eGet(attribute);
        List<String> entered = FormReader.lines(text);
        if (!entered.equals(FormReader.lines(String.join("\n", lines)))) {
            lines.clear();
            lines.addAll(entered);
        }
    }

    /** Whether a value means what is there already; then what is there stays, with its number as it was first written. */
    private static boolean same(Object existing, Object entered) {
        if (existing instanceof Quantity<?> before && entered instanceof Quantity<?> now) {
            return before.si() == now.si() && before.givenUnit().equals(now.givenUnit()) && before.accuracy().equals(now.accuracy());
        }
        return Objects.equals(existing, entered);
    }
}
