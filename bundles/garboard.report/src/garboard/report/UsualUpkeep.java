// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;

import garboard.quantity.TimeSpan;

/** What the upkeep of a small marine set usually is. Common practice; the maker's manual comes first. */
public final class UsualUpkeep {

    /** How often, whichever comes first. */
    public enum Interval {
        MONTHLY(1, "50 h"), HALF_YEARLY(6, "200 h"), YEARLY(12, "200 h");

        private final int months;
        private final TimeSpan hours;

        Interval(int months, String hours) {
            this.months = months;
            this.hours = TimeSpan.valueOf(hours);
        }

        public int months() {
            return months;
        }

        /** {@return hours of running} */
        public TimeSpan hours() {
            return hours;
        }
    }

    /**
     * A usual task.
     *
     * @param id a word that stays the same, for translations
     * @param words what is to be done, in English
     */
    public record Task(String id, Interval interval, String words) {
    }

    /** Why no piece of an impeller may stay lost, and what to look at. */
    public static final String IMPELLER_RULE = "Every six months is advised, every year is usual. Take the cover off and count the vanes; bend each to its "
        + "root. Replace for a crack deeper than half the vane, a permanent bend, a glazed face or a lost tip, and after any dry run of more "
        + "than about half a minute. Every missing piece must be found before the set runs again: look in the pump outlet, the hose behind "
        + "it, the inlet cap of the cooler, the siphon loop and the injection ring. Fit wet, vanes trailing, with a new gasket, then measure "
        + "the flow.";

    private static final List<Task> TASKS = List.of(
        monthly("strainer", "Raw-water strainer opened and cleaned"),
        monthly("pump", "Raw-water pump: weep hole dry, cover tight"),
        monthly("belt", "Belt tension and wear"),
        monthly("hoses", "Hoses and clamps felt by hand, soft or stiff ones noted"),
        monthly("muffler", "Muffler drained, amount and colour of the water noted"),
        monthly("separator", "Water let out of the fuel separator"),
        monthly("siphon", "Siphon break: no weep, valve free, no salt"),
        monthly("seacock", "Seacock worked through its whole travel"),
        monthly("exhaust", "Exhaust looked over for soot and water tracks"),
        monthly("carbonMonoxide", "Carbon monoxide alarms tested"),
        monthly("run", "Set run for at least half an hour at half load or more"),
        monthly("battery", "Starting battery: voltage at rest, terminals, fastening"),
        new Task("impeller", Interval.HALF_YEARLY, "Impeller of the raw-water pump: vanes counted, every missing piece found"),
        yearly("oil", "Oil and oil filter"),
        yearly("fuelFilter", "Fuel filter elements"),
        yearly("anode", "Anode and end caps of the heat exchanger, earlier in warm salt water"),
        yearly("coolant", "Coolant by its age, thermostat"),
        yearly("siphonValve", "Siphon valve taken apart and cleaned, or replaced"),
        yearly("elbow", "Mixing elbow taken off and probed: wall and ports"),
        yearly("oldHoses", "Exhaust and raw-water hoses older than five to eight years replaced"),
        yearly("backPressure", "Back pressure under load compared with the first reading"),
        yearly("blower", "Blower: air flow measured"),
        yearly("grating", "Hull grating and pick-up cleaned when hauled out"),
        yearly("seacockGrease", "Seacock taken apart and greased when hauled out"),
        yearly("mounts", "Mounts, bolts and alignment"),
        yearly("shutdowns", "Every shutdown proved: oil pressure, coolant, exhaust temperature, stop"),
        yearly("frost", "Before frost: flushed with fresh water, antifreeze drawn right through to the muffler, impeller out"));

    private UsualUpkeep() {
    }

    private static Task monthly(String id, String words) {
        return new Task(id, Interval.MONTHLY, words);
    }

    private static Task yearly(String id, String words) {
        return new Task(id, Interval.YEARLY, words);
    }

    /** {@return the tasks, the frequent ones first} */
    public static List<Task> tasks() {
        return TASKS;
    }
}
