// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Control;

import garboard.session.Field;
import garboard.workbench.look.Palette;

/** What stands in a row to fill in a field, or the three figures of a place. */
interface Editor {

    /** {@return the control in the row} */
    Control control();

    /** {@return the fields that are filled in here} */
    List<Field> fields();

    /** Shows what the record says, unless that is what is being typed. */
    void show();

    /** {@return what stands beside the entry: its unit, its converted value} */
    default Optional<String> beside() {
        return Optional.empty();
    }

    /** {@return what is to be said of the entry as it stands} */
    default Optional<Message> message() {
        return Optional.empty();
    }

    /** Takes the colours of a palette for what it writes itself. */
    default void colour(Palette palette) {
    }

    /** Gives the control of a field the focus. */
    boolean setFocus(Field field);

    /** {@return how much room it wants} */
    Room room();

    /** Room across: that of a figure, of three figures, of a choice, or all there is. */
    enum Room {
        FIGURE, FIGURES, CHOICE, ALL
    }

    /** A sentence about an entry. @param fault whether something is wrong, else it only helps on */
    record Message(String words, boolean fault) {
    }
}
