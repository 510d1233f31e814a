// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import java.util.Locale;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;

/** Key strokes, sent to the control that has the focus and through the filters of the display, where key bindings listen. */
public final class KeyStrokes {

    private static final Map<String, Integer> NAMED = Map.ofEntries(Map.entry("enter", (int) SWT.CR), Map.entry("escape", (int) SWT.ESC),
        Map.entry("tab", (int) SWT.TAB), Map.entry("f1", SWT.F1), Map.entry("f8", SWT.F8), Map.entry("delete", (int) SWT.DEL),
        Map.entry("up", SWT.ARROW_UP), Map.entry("down", SWT.ARROW_DOWN), Map.entry("left", SWT.ARROW_LEFT), Map.entry("right", SWT.ARROW_RIGHT),
        Map.entry("pageup", SWT.PAGE_UP), Map.entry("pagedown", SWT.PAGE_DOWN));

    private KeyStrokes() {
    }

    public static void press(Display display, String stroke) {
        var down = new Event();
        down.type = SWT.KeyDown;
        for (String part : stroke.toLowerCase(Locale.ROOT).split("\\+")) {
            switch (part) {
                case "ctrl" -> down.stateMask |= SWT.MOD1;
                case "shift" -> down.stateMask |= SWT.SHIFT;
                case "alt" -> down.stateMask |= SWT.ALT;
                default -> {
                    int code = NAMED.getOrDefault(part, (int) part.charAt(0));
                    down.keyCode = code;
                    down.character = (code & SWT.KEYCODE_BIT) != 0 ? 0 : (down.stateMask & SWT.MOD1) != 0 && code >= 'a' && code <= 'z'
                        ? (char) (code - 'a' + 1) : (char) code;
                }
            }
        }
        Control focus = display.getFocusControl();
        if (focus == null) {
            throw new AssertionError("Nothing has the focus, so that " + stroke + " goes nowhere");
        }
        down.widget = focus;
        focus.notifyListeners(SWT.KeyDown, down);
        if (down.doit) {
            var up = new Event();
            up.keyCode = down.keyCode;
            up.character = down.character;
            up.stateMask = down.stateMask;
            focus.notifyListeners(SWT.KeyUp, up);
        }
    }
}
