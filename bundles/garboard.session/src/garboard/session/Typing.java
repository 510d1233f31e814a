// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;

/**
 * A field being filled in, letter by letter: the record follows each letter, and undo takes all of it back at once. Ends by itself when
 * something else is edited, undone or saved; what is typed then begins a new step.
 */
public final class Typing {

    private final Edits edits;
    private final Field field;
    private final String label;
    private Optional<Step> step = Optional.empty();

    Typing(Edits edits, Field field, String label) {
        this.edits = edits;
        this.field = field;
        this.label = label;
    }

    public Field field() {
        return field;
    }

    /** The text stands for a value. */
    public void enter(Object value) {
        if (edits.unread(field).isEmpty() && field.value().filter(value::equals).isPresent()) {
            return;
        }
        type(edits.setting(field, value));
    }

    /** The field is empty. */
    public void clear() {
        type(edits.clearing(field));
    }

    /** The text cannot be read: it is kept as typed, and nothing counts as entered. */
    public void leaveUnread(String text) {
        if (!Objects.equals(edits.unread(field).orElse(null), text)) {
            type(edits.leavingUnread(field, text));
        }
    }

    private void type(List<Command> commands) {
        if (!edits.isHere(field)) {
            // The item went while it was typed into: there is nothing left to fill in.
            return;
        }
        step = edits.type(step, label, commands);
    }
}
