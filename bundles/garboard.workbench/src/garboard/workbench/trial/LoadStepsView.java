// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.LoadStep;
import garboard.model.Trial;
import garboard.session.OpenRecord;
import garboard.session.trial.LoadLadder;
import garboard.session.trial.ReadingSheet;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** All load steps, each under a heading of its own; the buttons that make them and choose the columns. */
final class LoadStepsView implements View {

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private final ReadingSheet sheet;
    private final ShownColumns columns;
    private final Composite list;
    private final Button make;
    private final Said none;
    private final List<LoadStepView> views = new ArrayList<>();

    LoadStepsView(Composite parent, OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
        this.texts = desk.texts(LoadStepsView.class);
        this.sheet = new ReadingSheet(record, desk.clock());
        this.columns = new ShownColumns(record.record(), desk, sheet);
        var bar = new Composite(parent, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(Lettering.width(parent, 1.5)).center(true).applyTo(bar);
        make = button(bar, "make", () -> LoadLadder.make(record, texts.get("load.make.undo")));
        button(bar, "add", this::add);
        Button choose = button(bar, "columns", () -> { });
        choose.addListener(SWT.Selection, event -> chooseColumns(choose));
        none = new Said(parent, desk, Tone.QUIET);
        list = new Composite(parent, SWT.NONE);
        list.setLayout(new Stacked(0, 2));
        show();
    }

    private Button button(Composite parent, String what, Runnable action) {
        var button = new Button(parent, SWT.PUSH);
        button.setText(texts.get("load." + what));
        button.setToolTipText(texts.get("load." + what + ".tip"));
        button.setData("garboard.id", "load." + what);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private void add() {
        LoadStep step = record.edits().add(record.record(), List.of(Literals.COMMISSIONING_RECORD__TRIAL, Literals.TRIAL__LOAD_STEPS),
            GarboardFactory.eINSTANCE.createLoadStep(), texts.get("load.add.undo"));
        show();
        views.stream().filter(view -> view.step() == step).findFirst().ifPresent(LoadStepView::open);
    }

    private void chooseColumns(Button from) {
        var menu = new Menu(from);
        List<EAttribute> shown = columns.fields();
        for (EAttribute field : ReadingSheet.allColumns()) {
            var item = new MenuItem(menu, SWT.CHECK);
            item.setText(desk.labels().label(field).replace("&", "&&"));
            item.setSelection(shown.contains(field));
            item.addListener(SWT.Selection, event -> {
                columns.show(field, item.getSelection());
                views.forEach(LoadStepView::remake);
            });
        }
        menu.addListener(SWT.Hide, event -> menu.getDisplay().asyncExec(menu::dispose));
        menu.setLocation(from.toDisplay(0, from.getSize().y));
        menu.setVisible(true);
    }

    private List<LoadStep> steps() {
        return Optional.ofNullable(record.record().getTrial()).map(Trial::getLoadSteps).<List<LoadStep>>map(List::copyOf).orElse(List.of());
    }

    @Override
    public void show() {
        List<LoadStep> now = steps();
        if (!now.equals(views.stream().map(LoadStepView::step).toList())) {
            arrange(now);
        }
        views.forEach(LoadStepView::show);
        List<LoadLadder.Rung> missing = LoadLadder.missing(record.record());
        make.setEnabled(!missing.isEmpty());
        none.say(now.isEmpty() ? texts.get("load.none", String.join(", ", missing.stream().map(rung -> rung.load().toString()).toList())) : "");
    }

    /** Keeps the views of the steps that stay, so that what is open and where the cursor is stays, too. */
    private void arrange(List<LoadStep> now) {
        views.stream().filter(view -> !now.contains(view.step())).forEach(view -> view.control().dispose());
        views.removeIf(view -> view.control().isDisposed());
        boolean wasEmpty = views.isEmpty();
        var arranged = new ArrayList<LoadStepView>();
        for (LoadStep step : now) {
            LoadStepView view = views.stream().filter(one -> one.step() == step).findFirst()
                .orElseGet(() -> new LoadStepView(list, record, desk, step, sheet, columns));
            if (arranged.isEmpty()) {
                view.control().moveAbove(null);
            } else {
                view.control().moveBelow(arranged.getLast().control());
            }
            arranged.add(view);
        }
        views.clear();
        views.addAll(arranged);
        if (wasEmpty) {
            views.stream().filter(view -> !view.isComplete()).findFirst().or(() -> views.stream().findFirst()).ifPresent(LoadStepView::openAtFirst);
        }
        list.requestLayout();
    }

    @Override
    public boolean reveal(String key) {
        if (key.equals("trial.loadSteps")) {
            setFocus();
            return true;
        }
        return views.stream().anyMatch(view -> view.reveal(key));
    }

    @Override
    public void setFocus() {
        Optional<Control> open = views.stream().filter(LoadStepView::isOpen).findFirst().map(LoadStepView::control);
        open.ifPresentOrElse(Control::setFocus, make::setFocus);
    }
}
