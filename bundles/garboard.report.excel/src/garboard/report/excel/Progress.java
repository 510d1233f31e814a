// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

/** Told how far the writing is, and asked whether to go on. Called by the thread that writes. */
public interface Progress {

    /**
     * @param what what is being done now
     * @param done steps behind
     * @param total steps in all
     */
    void at(String what, int done, int total);

    /** Whether a person wants it stopped; nothing is left behind then. */
    boolean cancelled();

    /** Nobody watches. */
    static Progress none() {
        return new Progress() {
            @Override
            public void at(String what, int done, int total) {
                // nobody watches
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        };
    }
}
