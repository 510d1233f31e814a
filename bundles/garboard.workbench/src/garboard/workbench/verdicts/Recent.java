// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.verdicts;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;

import org.eclipse.swt.widgets.Display;

import garboard.session.verdicts.VerdictKey;

/** Which verdicts changed a moment ago. */
final class Recent {

    private static final int MOMENT_MILLIS = 4000;

    private final Display display;
    private final Runnable over;
    private final Map<VerdictKey, Integer> changed = new HashMap<>();
    private int edit;

    /** @param over run when some are no longer new */
    Recent(Display display, Runnable over) {
        this.display = display;
        this.over = over;
    }

    void add(Collection<VerdictKey> keys) {
        if (keys.isEmpty()) {
            return;
        }
        int number = ++edit;
        keys.forEach(key -> changed.put(key, number));
        display.timerExec(MOMENT_MILLIS, () -> {
            // One that changed again since stays for its own moment.
            if (changed.values().removeIf(marked -> marked == number)) {
                over.run();
            }
        });
    }

    boolean contains(VerdictKey key) {
        return changed.containsKey(key);
    }

    void forget() {
        changed.clear();
    }
}
