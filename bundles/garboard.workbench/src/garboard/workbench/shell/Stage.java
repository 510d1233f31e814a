// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.advanced.MPerspective;
import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.e4.ui.workbench.modeling.EPartService;

/** What the window shows: the start page, or the open record. */
public final class Stage {

    private final MApplication application;
    private final EModelService models;

    Stage(MApplication application, EModelService models) {
        this.application = application;
        this.models = models;
    }

    /** Shows the start page; an open record stays open. */
    public void showStart() {
        show("garboard.perspective.start");
    }

    public void showRecord() {
        show("garboard.perspective.record");
    }

    private void show(String perspective) {
        MWindow window = application.getChildren().getFirst();
        window.getContext().get(EPartService.class).switchPerspective((MPerspective) models.find(perspective, window));
    }
}
