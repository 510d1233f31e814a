// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.page;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** What stands in the middle of the window at one stop. Made once for an open record and kept until it closes. */
public interface Page {

    /** {@return the page's one control, made inside the parent; it scrolls by itself where it must} */
    Control create(Composite parent);

    /**
     * Brings a field into view and gives it the focus.
     *
     * @param key the key of the field or of a part or list, as verdicts name it
     * @return whether it is on this page
     */
    default boolean reveal(String key) {
        return false;
    }

    /** Puts the focus where a person would begin. */
    default void setFocus() {
    }

    /** Called when the page is shown again after another was: what is not followed all the time can be brought up to date here. */
    default void shown() {
    }

    /** Ends what the page listens to. Its control is disposed by the one that made it. */
    default void close() {
    }
}
