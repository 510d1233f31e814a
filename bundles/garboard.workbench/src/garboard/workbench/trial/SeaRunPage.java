// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.List;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.workbench.Desk;
import garboard.workbench.page.Page;

/** The sea run: how far the boat heeled and trimmed, what was seen, and how high the parts that keep the sea out stood then. */
public final class SeaRunPage implements Page {

    private final OpenRecord record;
    private final Desk desk;
    private Sections sections;

    public SeaRunPage(OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
    }

    @Override
    public Control create(Composite parent) {
        sections = new Sections(parent, record, desk, Stop.SEA_RUN).rows("seaRun", "seaRun")
            .add("seaHeights", List.of(), body -> new SeaHeightsView(body, record, desk)).make();
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
        sections.focus("trial.seaRun");
    }

    @Override
    public void close() {
        sections.close();
    }
}
