// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

import garboard.checks.Standing;
import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;

/** What to beware of, beside a thick line and a warning triangle. */
final class CautionBox extends Composite {

    private final Desk desk;

    CautionBox(Composite parent, Desk desk, String hazard, String words) {
        super(parent, SWT.NONE);
        this.desk = desk;
        setLayout(new Stacked(Lettering.height(parent, 2.2), Lettering.height(parent, 0.2)));
        var lead = new Said(this, desk, Tone.DANGER).say(hazard);
        Lettering.bold(lead.control());
        new Said(this, desk, Tone.PLAIN).say(words);
        Subscription palette = desk.onPalette(now -> redraw());
        addListener(SWT.Paint, event -> paint(event.gc));
        addDisposeListener(event -> palette.close());
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        int line = gc.getFontMetrics().getHeight();
        gc.setAntialias(SWT.ON);
        gc.setBackground(desk.palette().of(Standing.FALLS_SHORT));
        gc.fillRectangle(0, 0, Math.max(3, line / 6), area.height);
        int x = line / 2;
        int y = line / 3;
        gc.fillPolygon(new int[] {x + line / 2, y, x + line, y + line * 7 / 8, x, y + line * 7 / 8});
        gc.setForeground(desk.palette().ground());
        gc.setLineWidth(Math.max(1, line / 9));
        gc.drawLine(x + line / 2, y + line / 3, x + line / 2, y + line * 9 / 16);
        gc.drawPoint(x + line / 2, y + line * 12 / 16);
    }
}
