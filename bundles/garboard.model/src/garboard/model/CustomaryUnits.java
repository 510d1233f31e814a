// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import java.util.Locale;

import org.eclipse.emf.ecore.EAttribute;

import garboard.quantity.Kind;
import garboard.quantity.UnitSystem;

/**
 * The unit in which a field is offered while nothing is entered: a beam in metres, a bore in millimetres, a depression in pascals.
 * {@code units.properties} lists the fields for which the customary unit of the kind does not suit.
 */
public final class CustomaryUnits {

    private final Texts listed;
    private final UnitSystem system;

    private CustomaryUnits(UnitSystem system) {
        this.listed = Texts.read("units", Locale.ROOT);
        this.system = system;
    }

    /** {@return the customary units of a system} */
    public static CustomaryUnits of(UnitSystem system) {
        return new CustomaryUnits(system);
    }

    /**
     * {@return the unit for a field}
     *
     * @param field of a quantity's type
     * @throws IllegalArgumentException when the field holds no quantity
     */
    public String unit(EAttribute field) {
        Kind<?> kind = Kind.ofType(field.getEAttributeType().getInstanceClass())
            .orElseThrow(() -> new IllegalArgumentException(field.getName() + " holds no quantity"));
        return listed.find(field.getEContainingClass().getName() + "." + field.getName())
            .map(pair -> pair.split(",")[system == UnitSystem.SI ? 0 : 1].strip()).orElseGet(() -> kind.displayUnit(system));
    }
}
