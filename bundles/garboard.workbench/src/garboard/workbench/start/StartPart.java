// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.util.List;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;

import org.eclipse.e4.ui.di.Focus;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import garboard.session.Listeners.Subscription;
import garboard.session.files.RecentRecords;
import garboard.workbench.Desk;
import garboard.workbench.shell.LeftBehind;

/** The start page, made anew when what stands on it changes while it is looked at, or before it is looked at again. */
public final class StartPart {

    @Inject
    private Desk desk;
    @Inject
    private StartActions actions;
    @Inject
    private RecentRecords recent;
    @Inject
    private LeftBehind leftBehind;
    private ScrolledComposite scrolled;
    private StartPage page;
    private List<Subscription> subscriptions = List.of();
    private boolean due;
    private boolean stale;

    @PostConstruct
    void create(Composite parent) {
        parent.setLayout(new FillLayout());
        scrolled = new ScrolledComposite(parent, SWT.V_SCROLL);
        scrolled.setData("garboard.id", "start");
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        scrolled.setShowFocusedControl(true);
        scrolled.addListener(SWT.Resize, event -> page.fit());
        scrolled.getVerticalBar().setIncrement(scrolled.getDisplay().getSystemFont().getFontData()[0].getHeight() * 3);
        scrolled.addListener(SWT.Paint, event -> scrolled.getDisplay().asyncExec(() -> {
            if (!scrolled.isDisposed()) {
                buildWhenSeen();
            }
        }));
        actions.onChange(this::changed);
        // Before the page is built: what is found meanwhile must not be missed.
        subscriptions = List.of(desk.onPalette(palette -> changed()), desk.onOpen(open -> changed()), recent.onChange(list -> changed()),
            leftBehind.onFound(found -> scrolled.getDisplay().asyncExec(this::changed)));
        build();
    }

    /** At most once for all that changes in one go. */
    private void changed() {
        if (!due && !scrolled.isDisposed()) {
            due = true;
            scrolled.getDisplay().asyncExec(() -> {
                due = false;
                if (!scrolled.isDisposed()) {
                    stale = true;
                    buildWhenSeen();
                }
            });
        }
    }

    private void buildWhenSeen() {
        if (stale && scrolled.isVisible()) {
            build();
        }
    }

    private void build() {
        stale = false;
        StartPage before = page;
        boolean hadFocus = before != null && before.holdsFocus();
        scrolled.setBackground(desk.palette().ground());
        page = new StartPage(scrolled, desk, actions, leftBehind.undecided());
        scrolled.setContent(page.control());
        page.fit();
        PageKeys.work(page.control(), scrolled);
        TabOrder.follow(page.control());
        if (before != null) {
            before.control().dispose();
        }
        if (hadFocus) {
            page.setFocus();
        }
    }

    @Focus
    void focus() {
        buildWhenSeen();
        page.setFocus();
    }

    @PreDestroy
    void end() {
        subscriptions.forEach(Subscription::close);
    }
}
