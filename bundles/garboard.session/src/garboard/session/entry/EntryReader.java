// SPDX-License-Identifier: EPL-2.0
package garboard.session.entry;

import static garboard.session.entry.Refusal.because;

import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;

import garboard.model.CustomaryUnits;
import garboard.model.FieldText;
import garboard.model.Labels;
import garboard.quantity.Kind;
import garboard.quantity.Quantity;
import garboard.quantity.UnitSystem;
import garboard.session.Edits;
import garboard.session.Field;
import garboard.session.entry.Refusal.Reason;

/** Reads what is typed into fields, and writes what stands in them. */
public final class EntryReader {

    private static final int LONGEST_QUANTITY = 200;

    private final UnitSystem system;
    private final Labels labels;
    private final Clock clock;
    private final CustomaryUnits units;
    private final Conversions conversions;

    /**
     * @param system the units that a bare number is taken in
     * @param labels what choices are called
     * @param clock today and the time zone, for moments written without them
     */
    public EntryReader(UnitSystem system, Labels labels, Clock clock) {
        this.system = system;
        this.labels = labels;
        this.clock = clock;
        this.units = CustomaryUnits.of(system);
        this.conversions = new Conversions(system);
    }

    /** {@return the units that a bare number is taken in} */
    public UnitSystem system() {
        return system;
    }

    /** {@return what a text stands for in a field} A text field takes everything. */
    public Reading read(EAttribute field, String text) {
        if (text.isBlank()) {
            return new Reading.Empty();
        }
        Class<?> type = field.getEAttributeType().getInstanceClass();
        if (Quantity.class.isAssignableFrom(type)) {
            return quantity(type, units.unit(field), text);
        }
        if (type == Integer.class) {
            return CountEntry.read(text);
        }
        if (type == LocalDate.class) {
            return DateEntry.date(text);
        }
        if (type == OffsetDateTime.class) {
            return DateEntry.moment(text, clock);
        }
        if (field.getEAttributeType() instanceof EEnum choices) {
            return choice(choices, text);
        }
        return new Reading.Entered(text, Optional.empty());
    }

    /** {@return what a text stands for where a quantity is wanted that is no field of the record} @param unit the unit that a bare number is taken in */
    public Reading read(Kind<?> kind, String unit, String text) {
        return text.isBlank() ? new Reading.Empty() : quantity(kind.type(), unit, text);
    }

    private static Reading quantity(Class<?> type, String unit, String text) {
        return text.length() > LONGEST_QUANTITY ? new Reading.Refused(because(Reason.TOO_LONG)) : new QuantityEntry(type, unit).read(text);
    }

    private Reading choice(EEnum choices, String text) {
        Optional<EEnumLiteral> meant = labels.choice(choices, text);
        if (meant.isEmpty()) {
            return new Reading.Refused(because(Reason.NO_CHOICE,
                String.join(", ", choices.getELiterals().stream().skip(1).map(literal -> labels.label(literal.getInstance())).toList())));
        }
        // The first literal of a choice says that nothing is chosen.
        return meant.get() == choices.getELiterals().getFirst() ? new Reading.Empty()
            : new Reading.Entered(meant.get().getInstance(), Optional.empty());
    }

    /** {@return the unit that a bare number in a field is taken in; nothing where the field holds no quantity or a pure number} */
    public Optional<String> unit(EAttribute field) {
        return Quantity.class.isAssignableFrom(field.getEAttributeType().getInstanceClass())
            ? Optional.of(units.unit(field)).filter(unit -> !unit.equals("1")) : Optional.empty();
    }

    /** {@return a value as a person would type it} */
    public String written(EAttribute field, Object value) {
        return switch (value) {
            case OffsetDateTime moment -> DateEntry.written(moment);
            case Enumerator choice -> labels.label(choice);
            default -> FieldText.text(field.getEAttributeType(), value);
        };
    }

    /** {@return what stands in a field of an open record: the entry, what was typed and could not be read, or nothing} */
    public String shown(Edits edits, Field field) {
        return edits.unread(field).or(() -> field.value().map(value -> written(field.attribute(), value))).orElse("");
    }

    /** {@return a quantity in the units that it was not given in, where that says anything new} */
    public Optional<String> converted(EAttribute field, Object value) {
        return value instanceof Quantity<?> quantity ? conversions.of(field, quantity) : Optional.empty();
    }

    /** {@return a quantity that is no field of the record in the units that it was not given in, where that says anything new} */
    public Optional<String> converted(Quantity<?> quantity) {
        return conversions.of(quantity);
    }
}
