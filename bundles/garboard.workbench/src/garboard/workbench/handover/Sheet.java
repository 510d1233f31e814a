// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

import garboard.workbench.look.Lettering;

/** Words and buttons below each other, as wide as there is room. */
final class Sheet {

    private Sheet() {
    }

    /** {@return an area in columns, as wide as its parent} */
    static Composite area(Composite parent, int columns) {
        var area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(columns).spacing(Lettering.width(parent, 1), Lettering.height(parent, 0.3)).applyTo(area);
        if (parent.getLayout() instanceof GridLayout) {
            GridDataFactory.fillDefaults().grab(true, false).applyTo(area);
        }
        return area;
    }

    /** {@return running text, wrapped at the width there is} */
    static Label words(Composite parent, String sentence) {
        var label = new Label(parent, SWT.WRAP);
        label.setText(sentence.replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(1, SWT.DEFAULT).applyTo(label);
        return label;
    }

    /** {@return a sentence with a place in it that is pressed} @param words plain words @param place what is pressed */
    static Link link(Composite parent, String words, String place, Runnable pressed) {
        var link = new Link(parent, SWT.NONE);
        link.setText(plain(words) + (words.isEmpty() ? "" : " ") + "<a>" + plain(place) + "</a>");
        link.addListener(SWT.Selection, event -> pressed.run());
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(link);
        return link;
    }

    /** A sign of order of its own cannot be told from the beginning of a link. */
    private static String plain(String words) {
        return words.replace("&", "&&").replace("<", "\u2039").replace(">", "\u203a");
    }

    static Button button(Composite parent, String id, String label, Runnable pressed) {
        var button = new Button(parent, SWT.PUSH);
        button.setText(label);
        button.setData("garboard.id", id);
        button.addListener(SWT.Selection, event -> pressed.run());
        return button;
    }

    /** {@return buttons side by side, in as many lines as they need} */
    static Composite row(Composite parent) {
        var row = new Composite(parent, SWT.NONE);
        var layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginLeft = 0;
        layout.marginRight = 0;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.center = true;
        layout.spacing = Lettering.width(parent, 1);
        row.setLayout(layout);
        if (parent.getLayout() instanceof GridLayout) {
            GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(row);
        }
        return row;
    }
}
