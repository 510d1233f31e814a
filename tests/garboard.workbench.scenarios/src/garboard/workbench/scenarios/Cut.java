// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import java.util.Arrays;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** Looks for buttons that are smaller than the words on them. */
final class Cut {

    private Cut() {
    }

    /** {@return the texts of the visible buttons that do not fit, each followed by a bar} */
    static String fields(Display display) {
        var cut = new StringBuilder();
        Arrays.stream(display.getShells()).filter(Control::isVisible).forEach(shell -> look(shell, cut));
        return cut.toString();
    }

    /** What wraps needs the height for its lines, all else the width for its one line; a pixel is lost by rounding. */
    private static boolean fits(Button button) {
        return (button.getStyle() & SWT.WRAP) != 0
            ? button.computeSize(button.getSize().x, SWT.DEFAULT).y <= button.getSize().y + 1
            : button.computeSize(SWT.DEFAULT, SWT.DEFAULT).x <= button.getSize().x + 1;
    }

    private static void look(Composite composite, StringBuilder into) {
        for (Control child : composite.getChildren()) {
            if (child instanceof Button button && button.isVisible() && !button.getText().isEmpty()
                && button.getSize().x > 0 && !fits(button)) {
                into.append(button.getText()).append('|');
            }
            if (child instanceof Composite below) {
                look(below, into);
            }
        }
    }
}
