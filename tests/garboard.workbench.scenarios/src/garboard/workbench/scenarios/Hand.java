// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * A hand and an eye at the window. Things are named as a person would name them: by the text on them or the label before them; or by
 * their id ({@code field:vessel.beam}, {@code verdicts.filter}) where the text is not alone or changes with the language. What is not
 * there yet is waited for, and what does not come is told with what was there instead. Called from the test's thread.
 */
public interface Hand {

    /** Presses a button, a link or a tool: by its text, tool tip, accessible name or id. */
    void press(String what);

    /** Chooses an entry of the menu bar, by its texts without mnemonics and key names. */
    void menu(String... path);

    /** Puts the focus on a text field, replaces what stands there letter by letter, and goes on to the next field. */
    void type(String field, String text);

    /** As {@link #type}, but stays in the field, as a person does who is about to go on typing. */
    void begin(String field, String text);

    /** {@return what stands in a text field, a label or beside a choice} */
    String read(String what);

    /** Chooses one of the entries of a choice. */
    void choose(String field, String entry);

    /** Chooses the row of a tree or list that is meant by a text, see {@link Row}. */
    void pick(String list, String row);

    /** {@return the texts of all rows of a tree or list, columns joined by a bar} */
    List<String> rows(String list);

    /** Presses keys, as {@code Ctrl+Z}, {@code Enter}, {@code F8}, where the focus is. */
    void keys(String stroke);

    /** {@return whether a visible text contains this, anywhere in the open windows} */
    boolean sees(String text);

    /** {@return whether something with this name or id is there, visible, and can be used} */
    boolean canUse(String what);

    /** Waits until something holds, and fails in words otherwise. */
    void await(String what, BooleanSupplier holds);

    /** {@return the size of the letters of the window's control in pixels, to see whether the scale holds} */
    int letterHeight(String what);

    /** Keeps a picture of the screen. */
    void picture(Path file);
}
