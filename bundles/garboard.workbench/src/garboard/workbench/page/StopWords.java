// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.page;

import garboard.session.Stop;
import garboard.workbench.Desk;

/** What the stops of the walk are called, wherever they are named. */
public final class StopWords {

    private StopWords() {
    }

    public static String of(Desk desk, Stop stop) {
        return desk.texts(StopWords.class).get("stop." + stop.name());
    }
}
