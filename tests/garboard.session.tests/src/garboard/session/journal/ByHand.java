// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** A clockwork that a test winds on. */
final class ByHand implements Later {

    private final List<Runnable> due = new ArrayList<>();
    private Duration longest = Duration.ZERO;

    @Override
    public void after(Duration pause, Runnable task) {
        due.add(task);
        longest = pause.compareTo(longest) > 0 ? pause : longest;
    }

    /** Does all that is due. @return how many tasks that were */
    int pass() {
        List<Runnable> now = List.copyOf(due);
        due.clear();
        now.forEach(Runnable::run);
        return now.size();
    }

    Duration longest() {
        return longest;
    }
}
