// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rating;

import java.util.List;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Power;
import garboard.quantity.TimeSpan;

/** Average power over a day, sum(P t) / sum(t); time at standstill stays out ({@link RatingSources#CATEGORIES}). */
public final class AveragePower {

    private static final double DAY_S = 24 * 3600;
    /** Powers below this share of the rating count as this share. */
    private static final double FLOOR = 0.30;

    private AveragePower() {
    }

    /** The plain average. */
    public static Power plain(List<Spell> spells) {
        return average(spells, 0);
    }

    /** The average that is held against a rating: less than 30 % of the rating counts as 30 %. */
    public static Power withFloor(List<Spell> spells, Power rated) {
        return average(spells, FLOOR * Argument.positive("rated power", rated));
    }

    private static Power average(List<Spell> spells, double floorW) {
        if (spells.isEmpty()) {
            throw OutOfRangeException.of("spells", 0, "1 or more");
        }
        TimeSpan running = TimeSpan.of(spells.stream().mapToDouble(spell -> spell.duration().si()).sum());
        double runningS = Argument.between("running time", running, 0, DAY_S, "at most 24 h");
        return Power.of(spells.stream().mapToDouble(spell -> Math.max(spell.power().si(), floorW) * spell.duration().si()).sum() / runningS);
    }

    /** A time of running at one power. */
    public record Spell(Power power, TimeSpan duration) {

        public Spell {
            Argument.notNegative("power", power);
            Argument.positive("duration", duration);
        }
    }
}
