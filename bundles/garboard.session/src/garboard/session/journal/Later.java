// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import java.time.Duration;

/** Does something a little later on the thread that edits. */
public interface Later {

    void after(Duration pause, Runnable task);
}
