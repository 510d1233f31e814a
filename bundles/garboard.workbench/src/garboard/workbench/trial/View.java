// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

/** What stands in one section of a page of the trial. */
interface View {

    /** Brings what it shows up to date with the record. */
    default void show() {
    }

    /** Brings a place into view and gives it the focus. @return whether it is here */
    default boolean reveal(String key) {
        return false;
    }

    default void setFocus() {
    }
}
