// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.lang.System.Logger.Level;
import java.util.Arrays;
import java.util.List;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.MUIElement;
import org.eclipse.e4.ui.model.application.ui.basic.MPartSashContainer;
import org.eclipse.e4.ui.model.application.ui.basic.MPartSashContainerElement;
import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Monitor;
import org.eclipse.swt.widgets.Shell;
import org.osgi.service.prefs.BackingStoreException;

import garboard.session.window.WindowPlace;

/** Remembers where the window stood, whether it filled the screen, and how its parts shared it. */
final class WindowMemory {

    private static final String MAXIMISED_TAG = "shellMaximized";
    private static final String PLACE = "place";
    private static final String MAXIMISED = "maximised";
    private static final String SHARE = "share.";
    private static final int FIRST_WIDTH = 1360;
    private static final int FIRST_HEIGHT = 860;

    private final IEclipsePreferences store;
    private WindowPlace last;

    /** @param store of its own, not that of the settings: two windows write theirs at different times */
    WindowMemory(IEclipsePreferences store) {
        this.store = store;
    }

    /** Puts the window where it was, before it is shown. */
    void recall(MApplication application, EModelService models, Display display) {
        List<WindowPlace> screens = Arrays.stream(display.getMonitors()).map(WindowMemory::room).toList();
        WindowPlace place = WindowPlace.parse(store.get(PLACE, "")).map(was -> was.on(screens))
            .orElseGet(() -> WindowPlace.middle(FIRST_WIDTH, FIRST_HEIGHT, room(display.getPrimaryMonitor())));
        MWindow window = application.getChildren().getFirst();
        window.setX(place.x());
        window.setY(place.y());
        window.setWidth(place.width());
        window.setHeight(place.height());
        last = place;
        if (store.getBoolean(MAXIMISED, false)) {
            window.getTags().add(MAXIMISED_TAG);
        }
        shares(application, models).forEach(part -> {
            String share = store.get(SHARE + part.getElementId(), "");
            if (share.matches("[1-9][0-9]{0,5}")) {
                part.setContainerData(share);
            }
        });
    }

    /** Notes where the window stands while it does not fill the screen. */
    void follow(Shell shell) {
        shell.addListener(SWT.Move, event -> note(shell));
        shell.addListener(SWT.Resize, event -> note(shell));
    }

    private void note(Shell shell) {
        if (!shell.getMaximized() && !shell.getMinimized() && !shell.getFullScreen()) {
            Rectangle bounds = shell.getBounds();
            last = new WindowPlace(bounds.x, bounds.y, bounds.width, bounds.height);
        }
    }

    /** Keeps it for the next start. */
    void keep(MApplication application, EModelService models, Shell shell) {
        store.put(PLACE, last.toString());
        store.putBoolean(MAXIMISED, shell.getMaximized());
        shares(application, models).forEach(part -> store.put(SHARE + part.getElementId(), part.getContainerData()));
        try {
            store.flush();
        } catch (BackingStoreException cannot) {
            System.getLogger(WindowMemory.class.getName()).log(Level.WARNING, "Where the window stood is not kept", cannot);
        }
    }

    private static List<MPartSashContainerElement> shares(MApplication application, EModelService models) {
        return models.findElements(application, MPartSashContainer.class, EModelService.ANYWHERE, element -> element instanceof MPartSashContainer)
            .stream().flatMap(sash -> sash.getChildren().stream()).filter(WindowMemory::isShared).toList();
    }

    private static boolean isShared(MUIElement part) {
        return part.getContainerData() != null && part.getElementId() != null;
    }

    private static WindowPlace room(Monitor monitor) {
        Rectangle area = monitor.getClientArea();
        return new WindowPlace(area.x, area.y, area.width, area.height);
    }
}
