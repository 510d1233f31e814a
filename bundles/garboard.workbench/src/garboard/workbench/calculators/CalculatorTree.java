// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.calculators;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

import garboard.session.Listeners.Subscription;
import garboard.session.calculators.CalculatorList;
import garboard.session.calculators.CalculatorList.Entry;
import garboard.session.calculators.Subject;
import garboard.workbench.Desk;
import garboard.workbench.look.Spoken;
import garboard.workbench.text.Texts;

/** The calculations by subject, and a search over them. */
final class CalculatorTree {

    private final Desk desk;
    private final Texts.Of texts;
    private final CalculatorList list;
    private final Consumer<Entry> open;
    private final Text search;
    private final Tree tree;
    private final Label found;

    CalculatorTree(Composite parent, Desk desk, Consumer<Entry> open) {
        this.desk = desk;
        this.texts = desk.texts(CalculatorTree.class);
        this.list = desk.calculators().list();
        this.open = open;
        var area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        search = new Text(area, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL | SWT.SINGLE | SWT.BORDER);
        search.setMessage(texts.get("search.hint"));
        search.setData("garboard.id", "calculators.search");
        Spoken.name(search, texts.get("search"));
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(search);
        tree = new Tree(area, SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        tree.setData("garboard.id", "calculators.tree");
        Spoken.name(tree, texts.get("tree"));
        GridDataFactory.fillDefaults().grab(true, true).hint(1, 1).applyTo(tree);
        found = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(found);
        search.addListener(SWT.Modify, event -> fill());
        search.addListener(SWT.KeyDown, this::leaveSearch);
        search.addListener(SWT.DefaultSelection, event -> takeFirst());
        tree.addListener(SWT.Selection, event -> chosen());
        tree.addListener(SWT.DefaultSelection, event -> toggle());
        Subscription palette = desk.onPalette(now -> found.setForeground(now.faint()));
        tree.addDisposeListener(event -> palette.close());
        found.setForeground(desk.palette().faint());
        fill();
    }

    private String called(Subject subject) {
        return texts.get("subject." + subject.name());
    }

    private void fill() {
        List<Entry> entries = list.matching(search.getText(), this::called);
        Optional<Entry> before = selected();
        tree.setRedraw(false);
        tree.removeAll();
        boolean searching = !search.getText().isBlank();
        Map<Subject, TreeItem> subjects = new EnumMap<>(Subject.class);
        var openAgain = new ArrayList<TreeItem>();
        for (Entry entry : entries) {
            TreeItem above = subjects.computeIfAbsent(entry.subject(), this::subject);
            var item = new TreeItem(above, SWT.NONE);
            item.setText(entry.calculation().title());
            item.setData(entry);
            if (before.filter(entry::equals).isPresent()) {
                tree.setSelection(item);
                openAgain.add(above);
            }
        }
        subjects.values().forEach(item -> item.setExpanded(searching || openAgain.contains(item)));
        tree.setRedraw(true);
        found.setText(searching ? texts.get("search.found", entries.size()) : texts.get("search.all", entries.size()));
        found.requestLayout();
    }

    private TreeItem subject(Subject subject) {
        var item = new TreeItem(tree, SWT.NONE);
        item.setText(called(subject));
        return item;
    }

    private Optional<Entry> selected() {
        return tree.getSelectionCount() == 1 && tree.getSelection()[0].getData() instanceof Entry entry ? Optional.of(entry) : Optional.empty();
    }

    private void chosen() {
        selected().ifPresent(open);
    }

    private void toggle() {
        if (tree.getSelectionCount() == 1 && selected().isEmpty()) {
            TreeItem item = tree.getSelection()[0];
            item.setExpanded(!item.getExpanded());
        }
    }

    private void leaveSearch(Event event) {
        if (event.keyCode == SWT.ARROW_DOWN) {
            event.doit = false;
            takeFirst();
            tree.setFocus();
        } else if (event.keyCode == SWT.ESC && !search.getText().isEmpty()) {
            event.doit = false;
            search.setText("");
        }
    }

    private void takeFirst() {
        if (selected().isEmpty() && tree.getItemCount() > 0 && !search.getText().isBlank()) {
            tree.setSelection(tree.getItem(0).getItem(0));
            chosen();
        }
    }

    /** Chooses a calculation and opens it. */
    void choose(Entry entry) {
        for (TreeItem subject : tree.getItems()) {
            for (TreeItem item : subject.getItems()) {
                if (item.getData() instanceof Entry one && one.calculation().name().equals(entry.calculation().name())) {
                    subject.setExpanded(true);
                    tree.setSelection(item);
                    tree.showSelection();
                }
            }
        }
        open.accept(entry);
    }

    void setFocus() {
        search.setFocus();
    }
}
