// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;

/** Quiet sentences to the right of the tools. */
public final class StatusLine {

    private static final int SHOWN_MILLIS = 12_000;

    @Inject
    private Notices notices;
    @Inject
    private Desk desk;
    private Label line;
    private Subscription said;
    private Subscription repainted;
    private int count;

    @PostConstruct
    void create(Composite parent) {
        var area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(Lettering.width(parent, 1), 0).applyTo(area);
        line = new Label(area, SWT.RIGHT);
        line.setData("garboard.id", "window.notice");
        GridDataFactory.fillDefaults().grab(true, true).align(SWT.FILL, SWT.CENTER).applyTo(line);
        line.setForeground(desk.palette().faint());
        repainted = desk.onPalette(palette -> line.setForeground(palette.faint()));
        said = notices.onSay(this::show);
    }

    private void show(String sentence) {
        line.setText(sentence.replace("&", "&&"));
        line.setToolTipText(sentence);
        int shown = ++count;
        line.getDisplay().timerExec(SHOWN_MILLIS, () -> {
            if (!line.isDisposed() && shown == count) {
                line.setText("");
                line.setToolTipText(null);
            }
        });
    }

    @PreDestroy
    void end() {
        said.close();
        repainted.close();
    }
}
