// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.List;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.workbench.Desk;
import garboard.workbench.page.Page;

/** The graded load: a step for each load with its readings, and the readings as curves over time and over load. */
public final class LoadTrialPage implements Page {

    private final OpenRecord record;
    private final Desk desk;
    private Sections sections;

    public LoadTrialPage(OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
    }

    @Override
    public Control create(Composite parent) {
        sections = new Sections(parent, record, desk, Stop.LOAD_TRIAL)
            .add("loadSteps", List.of("trial.loadSteps"), body -> new LoadStepsView(body, record, desk))
            .add("plots", List.of(), body -> new PlotsView(body, record, desk)).make();
        return sections.control();
    }

    @Override
    public void shown() {
        sections.shown();
    }

    @Override
    public boolean reveal(String key) {
        return sections.reveal(key);
    }

    @Override
    public void setFocus() {
        sections.focus("trial.loadSteps");
    }

    @Override
    public void close() {
        sections.close();
    }
}
