// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import garboard.session.files.Filing;

/** Ending the program: asks about what is not saved, and remembers that the person agreed, so that the journal may go. */
public final class Leaving {

    private final Filing filing;
    private boolean agreed;

    Leaving(Filing filing) {
        this.filing = filing;
    }

    /** {@return whether the program may end} */
    public boolean ask() {
        agreed = agreed || filing.mayLeave();
        return agreed;
    }

    /** {@return whether the person was asked and let it end} Without that the program was ended from outside, and nothing may be thrown away. */
    boolean agreed() {
        return agreed;
    }
}
