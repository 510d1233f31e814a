// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.look;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** What a screen reader calls a control that has no text of its own and no label before it. */
public final class Spoken {

    private static final String NAME = "garboard.spoken";

    private Spoken() {
    }

    /** Names a control, or names it anew. */
    public static void name(Control control, String words) {
        boolean first = control.getData(NAME) == null;
        control.setData(NAME, words);
        if (first) {
            control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
                @Override
                public void getName(AccessibleEvent event) {
                    if (event.childID == ACC.CHILDID_SELF) {
                        event.result = (String) control.getData(NAME);
                    }
                }
            });
        }
    }
}
