// SPDX-License-Identifier: EPL-2.0
package garboard.session.calculators;

import java.util.List;
import java.util.Optional;

import garboard.quantity.Quantity;

/** What a calculation says to its inputs as they stand. */
public sealed interface Answering {

    /** Inputs that the calculation cannot do without are empty. @param needed in the order of reading */
    record Waiting(List<CalculatorInput> needed) implements Answering {
        public Waiting {
            needed = List.copyOf(needed);
        }
    }

    /** An input cannot be read, or has only begun; what is wrong with it is said at the input. @param inputs in the order of reading */
    record Unread(List<CalculatorInput> inputs) implements Answering {
        public Unread {
            inputs = List.copyOf(inputs);
        }
    }

    /** The calculation refuses an input. @param input which, where it is one; nothing where the inputs do not go together */
    record Refused(Optional<CalculatorInput> input, String why) implements Answering {
    }

    /** There is an answer. */
    record Answered(List<Line> lines, List<String> warnings) implements Answering {
        public Answered {
            lines = List.copyOf(lines);
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * One result.
     *
     * @param name what it is
     * @param shown as it is shown, in one unit or several; words for an answer that is no quantity
     * @param quantity what goes into the record: just what is shown first, where it is a quantity
     */
    record Line(String name, List<String> shown, Optional<Quantity<?>> quantity) {
        public Line {
            shown = List.copyOf(shown);
        }
    }
}
