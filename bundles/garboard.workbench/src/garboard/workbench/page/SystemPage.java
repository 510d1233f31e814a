// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.session.form.FormGroup;
import garboard.workbench.Desk;
import garboard.workbench.fields.FieldHelp;
import garboard.workbench.fields.SheetScroll;

/** The particulars of one system, grouped as one would walk the boat. */
final class SystemPage implements Page {

    private static final int FIRST_LINES = 10;
    private static final int PAUSE = 10;

    private final Stop stop;
    private final OpenRecord record;
    private final Desk desk;
    private final List<GroupSection> groups = new ArrayList<>();
    private Display display;
    private boolean making;
    private boolean closed;

    SystemPage(Stop stop, OpenRecord record, Desk desk) {
        this.stop = stop;
        this.record = record;
        this.desk = desk;
    }

    @Override
    public Control create(Composite parent) {
        var area = new Composite(parent, SWT.NONE);
        area.setData("garboard.id", "page:" + stop.name());
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(area);
        var sheet = new SheetScroll(area, desk);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sheet.control());
        PageTitle.make(sheet.content(), desk, stop);
        for (FormGroup group : desk.form().at(stop)) {
            groups.add(new GroupSection(sheet.content(), record, desk, stop, group));
        }
        makeFirst();
        var help = new FieldHelp(area, record, desk, sheet.content());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(help.control());
        display = area.getDisplay();
        // Each group after the page was painted with those before: a timer alone would go before the painting.
        area.addListener(SWT.Paint, event -> {
            if (!making && groups.stream().anyMatch(GroupSection::isToBeMade)) {
                making = true;
                display.timerExec(PAUSE, () -> makeNext(area));
            }
        });
        return area;
    }

    /** What is seen without scrolling, on most screens. */
    private void makeFirst() {
        int lines = 0;
        for (GroupSection group : groups) {
            if (lines > FIRST_LINES) {
                return;
            }
            if (group.isToBeMade()) {
                group.make();
            }
            lines += group.lines();
        }
    }

    /** One group after the other, so that the page can be used while the rest of it is made. */
    private void makeNext(Control area) {
        making = false;
        if (!closed) {
            groups.stream().filter(GroupSection::isToBeMade).findFirst().ifPresent(GroupSection::make);
            area.redraw();
        }
    }

    @Override
    public boolean reveal(String key) {
        Optional<GroupSection> place = groups.stream().filter(group -> group.has(key)).findFirst();
        // What stands above it is made before, lest it move away under the eyes.
        place.ifPresent(found -> groups.stream().limit(groups.indexOf(found)).filter(GroupSection::isToBeMade).forEach(GroupSection::make));
        return place.filter(found -> found.reveal(key)).isPresent();
    }

    @Override
    public void setFocus() {
        Optional<GroupSection> first = groups.stream().filter(GroupSection::isOpen).findFirst();
        first.ifPresent(GroupSection::setFocus);
    }

    @Override
    public void close() {
        closed = true;
        groups.forEach(GroupSection::close);
    }
}
