// SPDX-License-Identifier: EPL-2.0
package garboard.session.entry;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;

import garboard.model.CustomaryUnits;
import garboard.quantity.Display;
import garboard.quantity.Quantity;
import garboard.quantity.UnitSystem;

/**
 * Which converted value is worth standing beside an entry: what was given in US customary units in metric ones, and the other way round;
 * what is given in a unit of both worlds, in the preferred system's customary unit for its size.
 */
final class Conversions {

    private static final Set<String> US = Set.of("in", "inch", "inches", "\"", "\u2033", "\u201d", "ft", "foot", "feet", "'", "yd", "mi", "mil", "thou",
        "cmil", "kcmil", "mcm", "gal", "qt", "pt", "floz", "lb", "lbs", "oz", "lbf", "psi", "psia", "psig", "psid", "psf", "inhg", "inh2o", "inwc",
        "inwg", "fth2o", "f", "degf", "\u00b0f", "gpm", "gph", "cfm", "hp", "bhp", "btu", "in2", "in3", "ft2", "ft3", "sqin", "sqft", "cuin", "cuft",
        "mph", "fpm", "usgal", "usgpm", "usgph");

    private static final double SAME = 1e-9;
    private static final String PURE = "1";

    private final UnitSystem preferred;
    private final CustomaryUnits si = CustomaryUnits.of(UnitSystem.SI);
    private final CustomaryUnits us = CustomaryUnits.of(UnitSystem.US);

    Conversions(UnitSystem preferred) {
        this.preferred = preferred;
    }

    Optional<String> of(EAttribute field, Quantity<?> quantity) {
        UnitSystem wanted = isUs(quantity.givenUnit()) ? UnitSystem.SI : UnitSystem.US;
        return in(wanted, field, quantity).or(() -> in(preferred, field, quantity));
    }

    /** For a quantity that is no field of the record, in the customary units of its kind. */
    Optional<String> of(Quantity<?> quantity) {
        UnitSystem wanted = isUs(quantity.givenUnit()) ? UnitSystem.SI : UnitSystem.US;
        return in(wanted, quantity.kind().displayUnit(wanted), quantity).or(() -> in(preferred, quantity.kind().displayUnit(preferred), quantity));
    }

    private Optional<String> in(UnitSystem system, EAttribute field, Quantity<?> quantity) {
        return in(system, (system == UnitSystem.SI ? si : us).unit(field), quantity);
    }

    private static Optional<String> in(UnitSystem system, String customary, Quantity<?> quantity) {
        if (customary.equals(PURE)) {
            return quantity.givenUnit().equals(PURE) ? Optional.empty() : Optional.of(Display.formatIn(quantity, PURE).replace(" " + PURE, ""));
        }
        String converted = customary.equals(quantity.kind().displayUnit(system)) ? Display.of(system).format(quantity)
            : Display.formatIn(quantity, customary);
        String unit = converted.substring(converted.indexOf(' ') + 1);
        return sameDigits(quantity, unit) ? Optional.empty() : Optional.of(converted);
    }

    /**
     * Whether the unit is that of the entry by another spelling, or the same with a prefix: its digits would say nothing new. But 0.8 is told
     * as 80 %, for that is how it is meant.
     */
    private static boolean sameDigits(Quantity<?> quantity, String unit) {
        double ratio = quantity.kind().of(1, unit).si() / quantity.kind().of(1, quantity.givenUnit()).si();
        double powers = Math.log10(ratio);
        return quantity.kind().unitMayBeLeftOut() ? ratio == 1 : Math.abs(powers - Math.rint(powers)) < SAME;
    }

    /** Whether the unit belongs to the US customary ones: one of its parts does. */
    static boolean isUs(String unit) {
        for (String part : unit.toLowerCase(Locale.ROOT).replace(" ", "").split("[/.()*-]")) {
            if (US.contains(part)) {
                return true;
            }
        }
        return false;
    }
}
