// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.ArrayList;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;

/**
 * Several fields that follow one movement of a hand: the record follows each, and undo takes all of it back at once. Ends by itself when
 * something else is edited, undone or saved; what is entered then begins a new step.
 */
public final class JointTyping {

    private final Edits edits;
    private final String label;
    private Optional<Step> step = Optional.empty();

    JointTyping(Edits edits, String label) {
        this.edits = edits;
        this.label = label;
    }

    /** @param values by the fields of existing parts; those that say what is there already are left alone */
    public void enter(Map<Field, ?> values) {
        var commands = new ArrayList<Command>();
        values.forEach((field, value) -> {
            boolean same = edits.unread(field).isEmpty() && field.value().filter(value::equals).isPresent();
            if (!same && edits.isHere(field)) {
                commands.addAll(edits.setting(field, value));
            }
        });
        step = edits.type(step, label, commands);
    }

    /** Takes all of it back, as if it had not been: there is nothing to redo. Does nothing when something else was done since. */
    public void giveUp() {
        step.ifPresent(edits::giveUp);
        step = Optional.empty();
    }
}
