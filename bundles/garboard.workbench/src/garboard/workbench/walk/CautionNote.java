// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.walk;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;

import garboard.checks.Standing;
import garboard.session.Caution;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** What can hurt at the chosen stop, quietly, in a sentence or two. */
final class CautionNote {

    private final Desk desk;
    private final Texts.Of texts;
    private final Composite area;
    private final Label lead;
    private final Label words;
    private Optional<Caution> shown = Optional.empty();

    CautionNote(Composite parent, Desk desk) {
        this.desk = desk;
        this.texts = desk.texts(CautionNote.class);
        area = new Composite(parent, SWT.NONE);
        int bar = bar();
        GridLayoutFactory.fillDefaults().extendedMargins(3 * bar, 0, bar, bar).spacing(0, 0).applyTo(area);
        lead = new Label(area, SWT.NONE);
        lead.setText(texts.get("caution"));
        Lettering.bold(lead);
        words = new Label(area, SWT.WRAP);
        words.setData("garboard.id", "walk.caution");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(words);
        area.addListener(SWT.Paint, this::paintBar);
        paint();
    }

    private int bar() {
        return Math.max(3, Lettering.width(area, 0.4));
    }

    Control control() {
        return area;
    }

    void show(Optional<Caution> caution) {
        if (caution.equals(shown) && area.getVisible() == caution.isPresent()) {
            return;
        }
        shown = caution;
        words.setText(caution.map(one -> texts.get("caution." + one.name())).orElse(""));
        area.setVisible(caution.isPresent());
        ((GridData) area.getLayoutData()).exclude = caution.isEmpty();
        area.requestLayout();
    }

    private void paintBar(Event event) {
        GC gc = event.gc;
        gc.setBackground(desk.palette().of(Standing.BORDERLINE));
        gc.fillRectangle(0, 0, bar(), area.getClientArea().height);
    }

    /** Takes the colours of now. */
    void paint() {
        lead.setForeground(desk.palette().of(Standing.BORDERLINE));
        area.redraw();
    }
}
