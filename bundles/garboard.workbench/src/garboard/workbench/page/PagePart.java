// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.page;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;

import org.eclipse.e4.ui.di.Focus;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;

/** The middle of the window: the page of the stop at which the person is. */
public final class PagePart {

    /** A page and the control that it made. */
    private record Shown(Page page, Control control) {
    }

    private final Map<Stop, Shown> pages = new EnumMap<>(Stop.class);
    private final StackLayout stack = new StackLayout();
    @Inject
    private Desk desk;
    @Inject
    private Ask ask;
    private Composite area;
    private Subscription opened;
    private Subscription gone;

    @PostConstruct
    void create(Composite parent) {
        area = new Composite(parent, SWT.NONE);
        area.setLayout(stack);
        opened = desk.onOpen(record -> clear());
        gone = desk.onGo(this::show);
        show(new Desk.Place(desk.stop(), Optional.empty()));
    }

    private void show(Desk.Place place) {
        desk.open().ifPresent(record -> {
            Shown shown = pages.computeIfAbsent(place.stop(), stop -> make(stop, record));
            if (stack.topControl != shown.control) {
                stack.topControl = shown.control;
                area.layout();
                shown.page.shown();
            }
            place.field().ifPresent(shown.page::reveal);
        });
    }

    private Shown make(Stop stop, OpenRecord record) {
        Page page = Pages.at(stop, record, desk, ask);
        return new Shown(page, page.create(area));
    }

    private void clear() {
        pages.values().forEach(shown -> {
            shown.page.close();
            shown.control.dispose();
        });
        pages.clear();
        stack.topControl = null;
    }

    /**
     * The part became the active one: by a key, or because something on it has the focus already, as a field that was gone to, or is being
     * pressed, which then takes the focus by itself.
     */
    @Focus
    void focus() {
        if (!isInside(area.getDisplay().getCursorControl()) && !isInside(area.getDisplay().getFocusControl())) {
            Optional.ofNullable(pages.get(desk.stop())).ifPresent(shown -> shown.page.setFocus());
        }
    }

    private boolean isInside(Control control) {
        for (Control at = control; at != null; at = at.getParent()) {
            if (at == area) {
                return true;
            }
        }
        return false;
    }

    @PreDestroy
    void end() {
        opened.close();
        gone.close();
        clear();
    }
}
