// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;

import garboard.model.FieldText;
import garboard.model.FieldTextException;
import garboard.model.Labels;
import garboard.quantity.Kind;
import garboard.quantity.Quantity;
import garboard.quantity.QuantityFormatException;

/** Between what stands in a form's cell and the value of a field, both ways. */
final class FieldEntry {

    private static final Pattern PLUS_MINUS = Pattern.compile("\\s*(?:±|\\+/-|\\+-)\\s*");
    /** Digits, signs and what may stand between them: a number without any unit. */
    private static final Pattern BARE_NUMBER = Pattern.compile("[-+−0-9.,/eE\\s]+");

    private final Labels labels;

    FieldEntry(Labels labels) {
        this.labels = labels;
    }

    /** A choice in the words of its drop-down list. */
    String word(Enumerator choice) {
        return labels.label(choice);
    }

    /**
     * The value that a person meant.
     *
     * @param text what stands in the cell, not blank
     * @param unit what stands in the unit's cell; the unit written beside the number wins
     * @throws EntryException telling what was found and what would be right
     */
    Object value(EAttribute attribute, String text, Optional<String> unit) {
        EDataType type = attribute.getEAttributeType();
        Optional<Kind<?>> kind = Kind.ofType(type.getInstanceClass());
        if (kind.isPresent()) {
            return quantity(kind.get(), text.strip(), unit.map(String::strip).orElse(""));
        }
        if (type instanceof EEnum choices) {
            return choice(choices, text.strip());
        }
        try {
            return FieldText.value(type, text).orElseThrow(() -> new EntryException("nothing was found"));
        } catch (FieldTextException refused) {
            throw new EntryException(refused);
        }
    }

    private static Quantity<?> quantity(Kind<?> kind, String text, String unit) {
        String[] parts = PLUS_MINUS.split(text, 2);
        String whole = withUnit(parts[0], unit, kind);
        if (parts.length == 2) {
            whole += " ±" + withUnit(parts[1], unit, kind);
        }
        try {
            return kind.parse(whole);
        } catch (QuantityFormatException refused) {
            throw new EntryException(refused);
        }
    }

    private static String withUnit(String number, String unit, Kind<?> kind) {
        // The unit of a plain ratio is itself written as a number: 0.8 1.
        boolean plainRatio = kind.accepts("1") && number.strip().endsWith(" 1");
        boolean bare = BARE_NUMBER.matcher(number).matches() && !plainRatio;
        if (bare && unit.isEmpty() && !kind.unitMayBeLeftOut()) {
            throw new EntryException(kind.name() + ": \"" + number.strip() + "\" has no unit; right would be \"" + number.strip()
                + " " + kind.units().getFirst() + "\" or a unit in the column beside it");
        }
        return bare && !unit.isEmpty() ? number.strip() + " " + unit : number;
    }

    private Object choice(EEnum choices, String text) {
        for (EEnumLiteral literal : choices.getELiterals()) {
            if (literal.getValue() != 0 && (word(literal).equalsIgnoreCase(text) || literal.getLiteral().equalsIgnoreCase(text))) {
                return literal.getInstance();
            }
        }
        String right = choices.getELiterals().stream().filter(literal -> literal.getValue() != 0).map(this::word)
            .collect(Collectors.joining(", "));
        throw new EntryException("\"" + text + "\" is none of the choices; right would be one of: " + right);
    }
}
