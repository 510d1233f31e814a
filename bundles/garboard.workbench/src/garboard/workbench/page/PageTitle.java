// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.page;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import garboard.session.Listeners.Subscription;
import garboard.session.Stop;
import garboard.workbench.Desk;

/** The title of a page: what the stop is called. */
public final class PageTitle {

    private static final int BIGGER = 6;

    private PageTitle() {
    }

    public static Label make(Composite parent, Desk desk, Stop stop) {
        var title = new Label(parent, SWT.NONE);
        title.setText(desk.texts(PageTitle.class).get("stop." + stop.name()));
        var resources = new LocalResourceManager(JFaceResources.getResources(), title);
        title.setFont(resources.create(FontDescriptor.createFrom(title.getFont()).increaseHeight(BIGGER)));
        title.setForeground(desk.palette().ink());
        Subscription palette = desk.onPalette(now -> title.setForeground(now.ink()));
        title.addDisposeListener(event -> palette.close());
        return title;
    }
}
