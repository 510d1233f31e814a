// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.List;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import garboard.model.GarboardPackage.Literals;
import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.workbench.Desk;
import garboard.workbench.fields.ItemsEditor;
import garboard.workbench.page.Page;

/** The first start: what must hold first, the steps in their order, priming, cranking, what is to be seen once it has fired, the shutdowns. */
public final class FirstStartPage implements Page {

    private final OpenRecord record;
    private final Desk desk;
    private Sections sections;

    public FirstStartPage(OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
    }

    @Override
    public Control create(Composite parent) {
        sections = new Sections(parent, record, desk, Stop.FIRST_START)
            .rows("occasion", "date", "place", "location", "people", "seaTemperature", "outsideTemperature", "barometricPressure",
                "relativeHumidity", "headOfWater")
            .add("conditions", List.of(), body -> new ConditionsView(body, record, desk))
            .add("procedure", List.of("trial.procedure"), body -> new ProcedureView(body, record, desk))
            .add("priming", List.of("trial.priming"), body -> new PrimingView(body, record, desk))
            .add("cranking", List.of("trial.attempts"), body -> new CrankingView(body, record, desk))
            .rows("afterStart", "waterAtOutletAfter", "oilPressureAfter", "leaksCold", "coolantLevelCold", "mufflerLevelChecked")
            .rows("afterLoad", "leaksHot", "coolantLevelHot", "coolantLevelColdAgain", "carbonMonoxideCabin")
            .add("shutdownTests", List.of("trial.shutdownTests"), this::shutdownTests)
            .rows("remarks", "remarks").make();
        return sections.control();
    }

    private View shutdownTests(Composite body) {
        var list = new ItemsEditor(body, record, desk, record.record(), List.of(Literals.COMMISSIONING_RECORD__TRIAL, Literals.TRIAL__SHUTDOWN_TESTS));
        return new View() {
            @Override
            public boolean reveal(String key) {
                return list.reveal(key);
            }

            @Override
            public void setFocus() {
                list.setFocus();
            }
        };
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
        sections.focus("trial.procedure");
    }

    @Override
    public void close() {
        sections.close();
    }
}
