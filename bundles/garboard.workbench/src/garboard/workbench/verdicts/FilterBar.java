// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.verdicts;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

import garboard.checks.Standing;
import garboard.session.Stop;
import garboard.session.verdicts.VerdictFilter;
import garboard.session.verdicts.VerdictList;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Mark;
import garboard.workbench.look.Spoken;
import garboard.workbench.page.StopWords;
import garboard.workbench.text.Texts;

/** What a person wants to see of the verdicts: words to search, a switch with its count for each standing, one stop or all. */
final class FilterBar {

    private final Desk desk;
    private final Texts.Of texts;
    private final Consumer<VerdictFilter> listener;
    private final Composite area;
    private final Text search;
    private final Map<Standing, Button> switches = new EnumMap<>(Standing.class);
    private final Map<Standing, Integer> counts = new EnumMap<>(Standing.class);
    private final Button onlyHere;
    private List<Image> marks = List.of();
    private VerdictFilter filter = VerdictFilter.usual();

    /** @param listener told of each new filter */
    FilterBar(Composite parent, Desk desk, Consumer<VerdictFilter> listener) {
        this.desk = desk;
        this.texts = desk.texts(FilterBar.class);
        this.listener = listener;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, Lettering.height(parent, 0.3)).applyTo(area);
        search = new Text(area, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        search.setMessage(texts.get("search.hint"));
        search.setData("garboard.id", "verdicts.search");
        Spoken.name(search, texts.get("search"));
        search.addListener(SWT.Modify, event -> take(filter.searching(search.getText())));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
        switches();
        onlyHere = new Button(area, SWT.CHECK);
        onlyHere.setData("garboard.id", "verdicts.onlyHere");
        onlyHere.setToolTipText(texts.get("onlyHere.tip"));
        onlyHere.addListener(SWT.Selection, event -> follow(desk.stop()));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(onlyHere);
        follow(desk.stop());
        paint();
        area.addListener(SWT.Dispose, event -> marks.forEach(Image::dispose));
    }

    private void switches() {
        var row = new Composite(area, SWT.NONE);
        var layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginLeft = 0;
        layout.marginRight = 0;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.spacing = Lettering.width(row, 0.4);
        row.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).hint(Lettering.width(row, 20), SWT.DEFAULT).applyTo(row);
        for (Standing standing : Standing.values()) {
            var one = new Button(row, SWT.TOGGLE);
            one.setSelection(filter.standings().contains(standing));
            one.setLayoutData(new RowData());
            one.setData("garboard.id", "verdicts.filter." + standing.name());
            one.addListener(SWT.Selection, event -> take(filter.with(standing, one.getSelection())));
            switches.put(standing, one);
            counts.put(standing, -1);
        }
    }

    Control control() {
        return area;
    }

    VerdictFilter filter() {
        return filter;
    }

    /** Puts the focus where words can be searched for. */
    void find() {
        search.setFocus();
        search.selectAll();
    }

    /** Lets keys lead from the search to what was found: Enter and the arrow down; Escape takes the words away first. */
    void onLeave(Runnable leave) {
        search.addListener(SWT.DefaultSelection, event -> {
            if (event.detail != SWT.ICON_CANCEL) {
                leave.run();
            }
        });
        search.addListener(SWT.KeyDown, event -> {
            boolean escape = event.keyCode == SWT.ESC;
            if (event.keyCode == SWT.ARROW_DOWN || escape && !clear()) {
                leave.run();
            }
            event.doit &= event.keyCode != SWT.ARROW_DOWN && !escape;
        });
    }

    /** Takes the words to search for away. @return whether there were any */
    boolean clear() {
        boolean any = !search.getText().isEmpty();
        search.setText("");
        return any;
    }

    /** Shows all verdicts that have the standing of one that is to be seen, wherever they are. */
    void makeRoomFor(Standing standing) {
        switches.get(standing).setSelection(true);
        onlyHere.setSelection(false);
        search.setText("");
        take(VerdictFilter.usual().with(standing, true));
        for (Standing other : Standing.values()) {
            switches.get(other).setSelection(filter.standings().contains(other));
        }
    }

    /** Follows the person to another stop. */
    void follow(Stop stop) {
        onlyHere.setText(texts.get("onlyHere", StopWords.of(desk, stop).replace("&", "&&")));
        take(filter.at(onlyHere.getSelection() ? Optional.of(stop) : Optional.empty()));
    }

    private void take(VerdictFilter next) {
        if (!next.equals(filter)) {
            filter = next;
            switches.keySet().forEach(this::tip);
            listener.accept(next);
        }
    }

    /** Shows how many verdicts there are of each standing. */
    void show(VerdictList list) {
        boolean wider = false;
        for (Standing standing : Standing.values()) {
            int count = list.count(standing);
            if (counts.get(standing) != count) {
                wider |= String.valueOf(count).length() != String.valueOf(counts.get(standing)).length();
                counts.put(standing, count);
                switches.get(standing).setText(String.valueOf(count));
                tip(standing);
                turn(standing, count);
            }
        }
        if (wider) {
            area.requestLayout();
        }
    }

    /** A fault of the program is rare: there is a switch for it only when there is one. */
    private void turn(Standing standing, int count) {
        Button one = switches.get(standing);
        boolean shown = standing != Standing.CHECK_BROKE || count > 0;
        ((RowData) one.getLayoutData()).exclude = !shown;
        one.setVisible(shown);
    }

    private void tip(Standing standing) {
        if (switches.containsKey(standing)) {
            switches.get(standing).setToolTipText(words(standing));
            Spoken.name(switches.get(standing), words(standing));
        }
    }

    private String words(Standing standing) {
        return texts.get(filter.standings().contains(standing) ? "filter.shown" : "filter.hidden", texts.get("standing." + standing.name()),
            counts.get(standing));
    }

    /** Draws the marks in the colours of now. */
    void paint() {
        int size = Lettering.height(area, 0.9) / 2 * 2;
        List<Image> before = marks;
        var fresh = new ArrayList<Image>();
        switches.forEach((standing, one) -> {
            Image mark = Mark.image(one.getDisplay(), desk.palette(), standing, size);
            fresh.add(mark);
            one.setImage(mark);
        });
        marks = fresh;
        before.forEach(Image::dispose);
    }
}
