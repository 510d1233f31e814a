// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.util.Optional;

import jakarta.inject.Inject;

import org.eclipse.e4.ui.di.UIEventTopic;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.advanced.MPerspective;
import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.e4.ui.workbench.UIEvents;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.e4.ui.workbench.modeling.EPartService;

import garboard.session.OpenRecord;
import garboard.workbench.Desk;

/** Shows the start page while no record is open, and the record otherwise. */
public final class WindowAddon {

    @Inject
    private Desk desk;
    @Inject
    private MApplication application;
    @Inject
    private EModelService models;

    @Inject
    @org.eclipse.e4.core.di.annotations.Optional
    void started(@UIEventTopic(UIEvents.UILifeCycle.APP_STARTUP_COMPLETE) Object event) {
        desk.onOpen(this::turn);
    }

    private void turn(Optional<OpenRecord> open) {
        MWindow window = application.getChildren().getFirst();
        String wanted = open.isPresent() ? "garboard.perspective.record" : "garboard.perspective.start";
        window.getContext().get(EPartService.class)
            .switchPerspective((MPerspective) models.find(wanted, window));
    }
}
