// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.Map;

import garboard.quantity.Area;
import garboard.quantity.Display;
import garboard.quantity.Quantity;
import garboard.quantity.UnitSystem;

/** Quantities as the report prints them: in the customary units of one system, with the signs of the trade. */
public final class Figures {

    /** Units that paper has a better sign for than a keyboard. Each is still read back by its kind. */
    private static final Map<String, String> SIGNS = Map.ofEntries(
        Map.entry("degC", "\u00b0C"), Map.entry("degF", "\u00b0F"), Map.entry("deg", "\u00b0"),
        Map.entry("mm2", "mm\u00b2"), Map.entry("cm2", "cm\u00b2"), Map.entry("m2", "m\u00b2"), Map.entry("in2", "in\u00b2"),
        Map.entry("ft2", "ft\u00b2"), Map.entry("m3", "m\u00b3"), Map.entry("cm3", "cm\u00b3"), Map.entry("in3", "in\u00b3"),
        Map.entry("ft3", "ft\u00b3"), Map.entry("m3/min", "m\u00b3/min"), Map.entry("m3/h", "m\u00b3/h"), Map.entry("m3/s", "m\u00b3/s"),
        Map.entry("ft3/min", "ft\u00b3/min"), Map.entry("kg/m3", "kg/m\u00b3"), Map.entry("lb/ft3", "lb/ft\u00b3"),
        Map.entry("um", "\u00b5m"), Map.entry("uA", "\u00b5A"), Map.entry("ohm", "\u03a9"), Map.entry("mohm", "m\u03a9"), Map.entry("uohm", "\u00b5\u03a9"), Map.entry("kohm", "k\u03a9"),
        Map.entry("Mohm", "M\u03a9"), Map.entry("ohm/km", "\u03a9/km"), Map.entry("1", ""));

    /** Below this an area is that of a conductor, told in square millimetres whatever the system. */
    private static final double CONDUCTOR_M2 = 2e-4;

    private final Display display;

    private Figures(Display display) {
        this.display = display;
    }

    public static Figures in(UnitSystem system) {
        return new Figures(Display.of(system));
    }

    /**
     * A quantity in one unit.
     *
     * @param value number in that unit, not rounded
     * @param unit its sign for paper, empty for a pure number
     * @param decimals worth printing
     */
    public record Shown(double value, String unit, int decimals) {
    }

    public UnitSystem system() {
        return display.system();
    }

    /** {@return number and unit, for running text} */
    public String text(Quantity<?> quantity) {
        return text(quantity, unit(quantity));
    }

    /** {@return the same in a unit of choice} */
    public String text(Quantity<?> quantity, String unit) {
        return written(Display.formatIn(quantity, unit));
    }

    /** {@return the symbol of the customary unit for a size} */
    public String unit(Quantity<?> quantity) {
        if (quantity instanceof Area && quantity.si() != 0 && Math.abs(quantity.si()) < CONDUCTOR_M2) {
            return "mm2";
        }
        String shown = display.format(quantity);
        return shown.substring(shown.indexOf(' ') + 1);
    }

    /** {@return the quantity in its customary unit} */
    public Shown shown(Quantity<?> quantity) {
        return shown(quantity, unit(quantity));
    }

    /** {@return the quantity in a unit} */
    public Shown shown(Quantity<?> quantity, String unit) {
        String number = Display.formatIn(quantity, unit).split(" ", 2)[0];
        int point = number.indexOf('.');
        return new Shown(quantity.in(unit), sign(unit), point < 0 ? 0 : number.length() - point - 1);
    }

    /** {@return a unit as paper has it} */
    public static String sign(String unit) {
        return SIGNS.getOrDefault(unit, unit);
    }

    private static String written(String numberAndUnit) {
        int space = numberAndUnit.indexOf(' ');
        String unit = sign(numberAndUnit.substring(space + 1));
        String number = numberAndUnit.substring(0, space);
        return unit.isEmpty() ? number : unit.equals("\u00b0") ? number + unit : number + " " + unit;
    }
}
