// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import garboard.model.GarboardPackage.Literals;
import garboard.model.LoadStep;
import garboard.model.Reading;
import garboard.model.RecordPath;
import garboard.session.Field;
import garboard.session.OpenRecord;
import garboard.session.trial.ReadingSheet;
import garboard.session.trial.StepReview;
import garboard.workbench.Desk;
import garboard.workbench.fields.FieldRows;
import garboard.workbench.fields.ItemsEditor;
import garboard.workbench.fields.Section;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** One load step: load and dwell, what it still lacks, its readings as on a clipboard. */
final class LoadStepView {

    private final OpenRecord record;
    private final Desk desk;
    private final LoadStep step;
    private final ReadingSheet sheet;
    private final ShownColumns columns;
    private final Texts.Of texts;
    private final ReviewWords words;
    private final Section section;
    private Optional<Body> body = Optional.empty();

    /** What is there once the step is opened. */
    private record Body(FieldRows rows, Said lacks, Composite place, FieldRows remarks) {
    }

    private Optional<ItemsEditor> readings = Optional.empty();

    LoadStepView(Composite parent, OpenRecord record, Desk desk, LoadStep step, ReadingSheet sheet, ShownColumns columns) {
        this.record = record;
        this.desk = desk;
        this.step = step;
        this.sheet = sheet;
        this.columns = columns;
        this.texts = desk.texts(LoadStepView.class);
        this.words = new ReviewWords(desk);
        section = new Section(parent, desk, "LOAD_TRIAL.step." + step.getId(), heading(), this::make);
        section.note(() -> words.note(StepReview.of(step)));
    }

    LoadStep step() {
        return step;
    }

    Control control() {
        return section.control();
    }

    boolean isOpen() {
        return section.isOpen();
    }

    boolean isComplete() {
        return StepReview.of(step).complete();
    }

    void open() {
        section.setOpen(true);
        body.ifPresent(made -> made.rows.setFocus());
    }

    void openAtFirst() {
        section.setOpen(true);
    }

    private String heading() {
        return step.getLoad() == null ? texts.get("load.step.without") : texts.get("load.step", step.getLoad());
    }

    private void make(Composite area) {
        area.setLayout(new Stacked(0, Lettering.height(area, 0.2)));
        area.setData("garboard.id", "load.step:" + step.getId());
        var rows = new FieldRows(area, record, desk).fields(step, Literals.LOAD_STEP__LOAD, Literals.LOAD_STEP__DWELL);
        var lacks = new Said(area, desk, Tone.OPEN);
        var bar = new Composite(area, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(Lettering.width(area, 1.5)).center(true).applyTo(bar);
        button(bar, "likeLast", this::addLikeLast);
        Button instruments = button(bar, "instruments", () -> { });
        instruments.addListener(SWT.Selection, event -> readings.flatMap(ItemsEditor::selected)
            .ifPresent(item -> InstrumentsMenu.open(instruments, record, desk, (Reading) item)));
        button(bar, "remove", () -> record.edits().remove(List.of(step), texts.get("load.remove.undo")));
        var place = new Composite(area, SWT.NONE);
        place.setLayout(new Stacked(0, 0));
        var remarks = new FieldRows(area, record, desk).fields(step, Literals.LOAD_STEP__REMARKS);
        body = Optional.of(new Body(rows, lacks, place, remarks));
        remake();
        instruments.setEnabled(false);
        readings.ifPresent(made -> made.onSelect(chosen -> instruments.setEnabled(chosen.isPresent())));
        show();
    }

    private Button button(Composite parent, String what, Runnable action) {
        var button = new Button(parent, SWT.PUSH);
        button.setText(texts.get("load." + what));
        button.setToolTipText(texts.get("load." + what + ".tip"));
        button.setData("garboard.id", "load." + what + ":" + step.getId());
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    /** Makes the table anew, with the columns that are chosen now. */
    void remake() {
        body.ifPresent(made -> {
            readings.ifPresent(old -> old.control().dispose());
            readings = Optional.of(new ItemsEditor(made.place, record, desk, step, List.of(Literals.LOAD_STEP__READINGS), columns.columns())
                .withoutDetail().making(() -> sheet.begin(step)));
            made.place.requestLayout();
        });
    }

    private void addLikeLast() {
        Reading added = sheet.addLikeLast(step, texts.get("load.likeLast.undo"));
        String first = columns.fields().stream().filter(ReadingSheet::isQuantity).findFirst().map(field -> Field.of(added, field).key())
            .orElse(RecordPath.key(added));
        readings.ifPresent(made -> made.reveal(first));
    }

    void show() {
        StepReview review = StepReview.of(step);
        section.heading(heading());
        section.noteAgain();
        body.ifPresent(made -> made.lacks.say(words.lacks(review), review.complete() ? Tone.GOOD : Tone.OPEN));
    }

    boolean reveal(String key) {
        String own = RecordPath.key((EObject) step);
        if (!key.equals(own) && !key.startsWith(own + ".")) {
            return false;
        }
        section.setOpen(true);
        return body.filter(made -> made.rows.reveal(key) || readings.filter(table -> table.reveal(key)).isPresent() || made.remarks.reveal(key))
            .isPresent();
    }
}
