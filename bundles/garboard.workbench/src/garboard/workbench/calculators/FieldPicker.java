// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.calculators;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

import garboard.session.calculators.RecordFigures.Figure;
import garboard.workbench.Desk;
import garboard.workbench.ask.PlainDialog;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Spoken;
import garboard.workbench.text.Texts;

/** Which field of the record? Those that are meant most likely stand first; a few letters find the others. */
final class FieldPicker extends PlainDialog {

    private static final int LINES = 14;
    private static final int PLACE = 64;
    private static final int VALUE = 18;

    private final String title;
    private final String sentence;
    private final String take;
    private final List<Figure> figures;
    private final Texts.Of texts;
    private List<Figure> shown;
    private Text filter;
    private Table table;
    private Optional<Figure> chosen = Optional.empty();

    FieldPicker(Shell parent, Desk desk, String title, String sentence, String take, List<Figure> figures) {
        super(parent, desk, "fieldPicker");
        this.title = title;
        this.sentence = sentence;
        this.take = take;
        this.figures = figures;
        this.shown = figures;
        this.texts = desk.texts(FieldPicker.class);
    }

    /** Shows it. @return the field that was chosen */
    Optional<Figure> ask() {
        open();
        return chosen;
    }

    @Override
    protected String title() {
        return title;
    }

    @Override
    protected void fill(Composite area) {
        text(area, figures.isEmpty() ? texts.get("picker.none") : sentence);
        filter = new Text(area, SWT.SEARCH | SWT.ICON_CANCEL | SWT.SINGLE | SWT.BORDER);
        filter.setMessage(texts.get("picker.filter"));
        filter.setData("garboard.id", "fieldPicker.filter");
        Spoken.name(filter, texts.get("picker.filter"));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        table = new Table(area, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        table.setData("garboard.id", "fieldPicker.table");
        Spoken.name(table, title);
        table.setHeaderVisible(true);
        column(texts.get("picker.place"), PLACE);
        column(texts.get("picker.value"), VALUE);
        GridDataFactory.fillDefaults().grab(true, true).hint(Lettering.width(table, PLACE + VALUE + 4), Lettering.height(table, LINES * 1.6)).applyTo(table);
        table.addListener(SWT.DefaultSelection, event -> okPressed());
        table.addListener(SWT.Selection, event -> getButton(IDialogConstants.OK_ID).setEnabled(true));
        filter.addListener(SWT.Modify, event -> {
            list();
            getButton(IDialogConstants.OK_ID).setEnabled(!shown.isEmpty());
        });
        filter.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.ARROW_DOWN && !shown.isEmpty()) {
                event.doit = false;
                table.setFocus();
                table.setSelection(Math.min(1, shown.size() - 1));
            }
        });
        list();
    }

    private void column(String heading, int letters) {
        var column = new TableColumn(table, SWT.LEFT);
        column.setText(heading);
        column.setWidth(Lettering.width(table, letters));
    }

    private void list() {
        List<String> words = Arrays.stream(filter.getText().toLowerCase(Locale.ROOT).strip().split("\\s+")).filter(word -> !word.isEmpty()).toList();
        shown = figures.stream().filter(figure -> {
            String text = (figure.words() + " " + figure.shown()).toLowerCase(Locale.ROOT);
            return words.stream().allMatch(text::contains);
        }).toList();
        table.setRedraw(false);
        table.removeAll();
        for (Figure figure : shown) {
            new TableItem(table, SWT.NONE).setText(new String[] {figure.words(), figure.shown().isEmpty() ? texts.get("picker.empty") : figure.shown()});
        }
        if (!shown.isEmpty()) {
            table.setSelection(0);
        }
        table.setRedraw(true);
    }

    @Override
    protected void createButtonsForButtonBar(Composite row) {
        button(row, IDialogConstants.OK_ID, "take", take, true).setEnabled(!figures.isEmpty());
        button(row, IDialogConstants.CANCEL_ID, "leave", texts.get("picker.leave"), false);
    }

    @Override
    protected void okPressed() {
        if (table.getSelectionIndex() >= 0) {
            chosen = Optional.of(shown.get(table.getSelectionIndex()));
            super.okPressed();
        }
    }
}
