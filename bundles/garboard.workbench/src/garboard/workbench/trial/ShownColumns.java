// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage.Literals;
import garboard.model.Reading;
import garboard.quantity.Ratio;
import garboard.report.Figures;
import garboard.session.trial.MeasuredLoad;
import garboard.session.trial.ReadingSheet;
import garboard.workbench.Desk;
import garboard.workbench.fields.ItemsEditor.Column;

/** Which columns the tables of readings have: what suits the set, and what the person put there or took away. */
final class ShownColumns {

    private static final String REMEMBERED = "column.reading.";
    /** The load stands behind what it is reckoned from. */
    private static final List<EAttribute> BEHIND = List.of(Literals.READING__CURRENT1, Literals.READING__CURRENT2, Literals.READING__CURRENT3);

    private final CommissioningRecord record;
    private final Desk desk;
    private final ReadingSheet sheet;

    ShownColumns(CommissioningRecord record, Desk desk, ReadingSheet sheet) {
        this.record = record;
        this.desk = desk;
        this.sheet = sheet;
    }

    List<EAttribute> fields() {
        List<EAttribute> usual = sheet.usualColumns();
        return ReadingSheet.allColumns().stream()
            .filter(field -> desk.settings().leftOpen(REMEMBERED + field.getName()).orElse(usual.contains(field))).toList();
    }

    void show(EAttribute field, boolean now) {
        desk.settings().leaveOpen(REMEMBERED + field.getName(), now);
    }

    List<Column> columns() {
        List<EAttribute> fields = fields();
        var columns = new ArrayList<Column>();
        int behind = fields.stream().filter(BEHIND::contains).mapToInt(fields::indexOf).max().orElse(0);
        for (int index = 0; index < fields.size(); index++) {
            columns.add(Column.of(fields.get(index)));
            if (index == behind) {
                columns.add(Column.reckoned(desk.texts(ShownColumns.class).get("column.load"), item -> load((Reading) item)));
            }
        }
        return columns;
    }

    private String load(Reading reading) {
        Optional<MeasuredLoad> load = MeasuredLoad.of(reading, record);
        var figures = Figures.in(desk.settings().units());
        return load.map(found -> found.share().map(share -> share(share, figures)).map(share -> found.from() == MeasuredLoad.From.POWER ? share
            : share + " (" + figures.text(found.power()) + ")").orElseGet(() -> figures.text(found.power()))).orElse("");
    }

    private static String share(Ratio share, Figures figures) {
        return figures.text(Ratio.of(Math.round(share.si() * 1000) / 1000.0), "%");
    }
}
