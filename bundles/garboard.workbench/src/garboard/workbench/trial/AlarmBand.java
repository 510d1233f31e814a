// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;

/** One sentence to be read from an arm's length while the other hand is on the key; loud where it has to be. */
final class AlarmBand extends Canvas {

    private final Desk desk;
    private final Font large;
    private String words = "";
    private Tone tone = Tone.GOOD;

    AlarmBand(Composite parent, Desk desk) {
        super(parent, SWT.NO_FOCUS | SWT.DOUBLE_BUFFERED);
        this.desk = desk;
        int height = getFont().getFontData()[0].getHeight();
        large = FontDescriptor.createFrom(getFont()).withStyle(SWT.BOLD).setHeight(height * 5 / 4).createFont(getDisplay());
        setData("garboard.id", "trial.alarm");
        Subscription palette = desk.onPalette(now -> redraw());
        addListener(SWT.Paint, event -> paint(event.gc));
        addDisposeListener(event -> {
            palette.close();
            large.dispose();
        });
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = words;
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_LABEL;
            }
        });
    }

    void show(String sentence, Tone how) {
        if (!sentence.equals(words) || how != tone) {
            boolean louder = how != tone;
            words = sentence;
            tone = how;
            redraw();
            Room.fit(this, true);
            if (louder) {
                getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
            }
        }
    }

    private int margin() {
        return large.getFontData()[0].getHeight() * 3 / 4;
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        int width = widthHint == SWT.DEFAULT ? 500 : widthHint;
        TextLayout layout = layout(width);
        int height = layout.getBounds().height;
        layout.dispose();
        return new Point(width, height + 2 * margin());
    }

    private TextLayout layout(int width) {
        var layout = new TextLayout(getDisplay());
        layout.setFont(large);
        layout.setText(words);
        layout.setWidth(Math.max(1, width - 3 * margin()));
        return layout;
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        boolean loud = tone == Tone.DANGER;
        gc.setAntialias(SWT.ON);
        gc.setBackground(loud ? tone.in(desk.palette()) : desk.palette().band());
        gc.fillRoundRectangle(0, 0, area.width, area.height, margin(), margin());
        gc.setBackground(tone.in(desk.palette()));
        gc.fillRectangle(0, 0, margin() / 2, area.height);
        gc.setForeground(loud ? desk.palette().ground() : desk.palette().ink());
        TextLayout layout = layout(area.width);
        layout.draw(gc, margin() * 3 / 2, margin());
        layout.dispose();
    }

    @Override
    protected void checkSubclass() {
        // It only measures itself otherwise.
    }
}
