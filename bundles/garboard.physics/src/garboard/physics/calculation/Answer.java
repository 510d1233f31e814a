// SPDX-License-Identifier: EPL-2.0
package garboard.physics.calculation;

import java.util.ArrayList;
import java.util.List;

import garboard.quantity.Quantity;

/**
 * What a calculation answers.
 *
 * @param results named figures and words, in the order of reading
 * @param warnings what the reader has to bear in mind, such as a figure outside the usual range
 */
public record Answer(List<Result> results, List<String> warnings) {

    /** One named result. */
    public sealed interface Result permits Figure, Words {
        String name();
    }

    /**
     * A quantity.
     *
     * @param units the units to print it in, the first one foremost; empty means the customary ones
     */
    public record Figure(String name, Quantity<?> quantity, List<String> units) implements Result {
        public Figure {
            units = List.copyOf(units);
        }
    }

    /** An answer that is no quantity: a size, yes or no, which case governs. */
    public record Words(String name, String text) implements Result {
    }

    public Answer {
        results = List.copyOf(results);
        warnings = List.copyOf(warnings);
    }

    public static Answer of(String name, Quantity<?> quantity, String... units) {
        return new Answer(List.of(), List.of()).and(name, quantity, units);
    }

    public static Answer of(String name, String text) {
        return new Answer(List.of(), List.of()).and(name, text);
    }

    public Answer and(String name, Quantity<?> quantity, String... units) {
        return with(new Figure(name, quantity, List.of(units)));
    }

    public Answer and(String name, String text) {
        return with(new Words(name, text));
    }

    public Answer warning(String text) {
        List<String> more = new ArrayList<>(warnings);
        more.add(text);
        return new Answer(results, more);
    }

    /** Adds the warning where the condition holds. */
    public Answer warningIf(boolean condition, String text) {
        return condition ? warning(text) : this;
    }

    private Answer with(Result result) {
        List<Result> more = new ArrayList<>(results);
        more.add(result);
        return new Answer(more, warnings);
    }
}
