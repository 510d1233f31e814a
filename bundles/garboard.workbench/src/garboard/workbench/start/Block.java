// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import garboard.workbench.look.Lettering;
import garboard.workbench.look.Palette;

/** A block of the start page: a heading over a rule, and what stands below it. */
final class Block extends Composite {

    /** Wrapped lines take the width that there is and ask for little. */
    private static final int LEAST_LETTERS = 28;

    private final Palette palette;

    Block(Composite parent, String heading, Palette palette) {
        super(parent, SWT.NONE);
        this.palette = palette;
        GridLayoutFactory.fillDefaults().spacing(0, Lettering.height(parent, 0.25)).applyTo(this);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(this);
        var head = new Label(this, SWT.NONE);
        head.setText(heading);
        Lettering.heading(head, 108);
        head.setForeground(palette.accent());
        var rule = new Composite(this, SWT.NONE);
        rule.setBackground(palette.line());
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, 1).applyTo(rule);
        rule.addPaintListener(event -> {
            event.gc.setBackground(palette.line());
            event.gc.fillRectangle(rule.getClientArea());
        });
    }

    /** Adds running text. */
    Label text(String sentence) {
        return text(this, sentence, palette.ink());
    }

    /** Adds running text in a colour to any parent with a grid. */
    static Label text(Composite parent, String sentence, Color ink) {
        var label = new Label(parent, SWT.WRAP);
        label.setText(sentence.replace("&", "&&"));
        label.setForeground(ink);
        GridDataFactory.fillDefaults().grab(true, false).hint(Lettering.width(label, LEAST_LETTERS), SWT.DEFAULT).applyTo(label);
        return label;
    }

    /** Adds a gap. */
    void gap(double lines) {
        var gap = new Label(this, SWT.NONE);
        gap.setLayoutData(new GridData(1, Lettering.height(this, lines)));
    }
}
