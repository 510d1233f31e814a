// SPDX-License-Identifier: EPL-2.0
package garboard.session.entry;

import java.util.List;
import java.util.Optional;

/** What a text in a field stands for. */
public sealed interface Reading {

    /** Nothing: the field is empty. */
    record Empty() implements Reading {
    }

    /**
     * A value.
     *
     * @param unitAdded the field's customary unit, when a number was written without one
     */
    record Entered(Object value, Optional<String> unitAdded) implements Reading {
    }

    /**
     * Not yet a value, but the beginning of one: to be told only when the person leaves it so.
     *
     * @param goesOn units with which it can go on; none where there are too many, or where a number has only begun
     * @param asItStands why it is no value when it is left so
     */
    record Begun(List<String> goesOn, Refusal asItStands) implements Reading {
        public Begun {
            goesOn = List.copyOf(goesOn);
        }
    }

    /** No value, and nothing that is added makes it one. */
    record Refused(Refusal why) implements Reading {
    }
}
