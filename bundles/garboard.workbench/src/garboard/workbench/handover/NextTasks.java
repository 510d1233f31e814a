// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

import garboard.model.RecordPath;
import garboard.session.OpenRecord;
import garboard.session.handover.DueTask;
import garboard.session.handover.DueTask.State;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Mark;
import garboard.workbench.text.Texts;

/** What is overdue and what comes next, each with a way to its line in the plan. */
final class NextTasks {

    private static final int FEWEST = 3;
    private static final int MOST = 8;
    private static final int LEAD = 115;

    private final Desk desk;
    private final Texts.Of texts;
    private final Tint tint;
    private final DueWords words;
    private final Consumer<String> reveal;
    private final Composite area;
    private List<String> shown = List.of();

    NextTasks(Composite parent, OpenRecord record, Desk desk, Tint tint, DueWords words, Consumer<String> reveal) {
        this.desk = desk;
        this.texts = desk.texts(NextTasks.class);
        this.tint = tint;
        this.words = words;
        this.reveal = reveal;
        area = Sheet.area(parent, 1);
        area.setData("garboard.id", "upkeep.next");
    }

    void show(List<DueTask> all) {
        List<String> now = all.stream().map(one -> one.state() + words.sentence(one)).toList();
        if (now.equals(shown) && area.getChildren().length > 0) {
            return;
        }
        shown = now;
        for (Control child : area.getChildren()) {
            child.dispose();
        }
        long overdue = all.stream().filter(one -> one.state() == State.OVERDUE).count();
        Label lead = tint.with(Sheet.words(area, lead(all, overdue)), palette -> overdue > 0 ? palette.of(DueWords.mark(all.getFirst())) : palette.ink());
        Lettering.scale(lead, LEAD);
        List<DueTask> datable = all.stream().filter(one -> one.state() != State.NO_INTERVAL && one.state() != State.NO_BEGINNING).toList();
        long pressing = datable.stream().filter(one -> one.state() == State.OVERDUE || one.state() == State.SOON).count();
        datable.stream().limit(Math.min(MOST, Math.max(FEWEST, pressing))).forEach(this::row);
        area.requestLayout();
    }

    private String lead(List<DueTask> all, long overdue) {
        if (all.isEmpty()) {
            return texts.get("upkeep.lead.none");
        }
        boolean told = all.stream().anyMatch(one -> one.state() == State.IN_ORDER || one.state() == State.SOON);
        return overdue > 0 ? texts.get("upkeep.lead.overdue", overdue) : texts.get(told ? "upkeep.lead.inOrder" : "upkeep.lead.unknown");
    }

    private void row(DueTask due) {
        var row = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        var canvas = new Canvas(row, SWT.NO_FOCUS);
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).hint(Lettering.height(row, 1.4), Lettering.height(row, 1.1)).applyTo(canvas);
        canvas.addListener(SWT.Paint, event -> {
            int size = canvas.getClientArea().height * 3 / 4;
            Mark.draw(event.gc, desk.palette(), DueWords.mark(due), 1, (canvas.getClientArea().height - size) / 2, size);
        });
        String key = RecordPath.key(due.task());
        Link link = Sheet.link(row, words.sentence(due), texts.get("upkeep.show"), () -> reveal.accept(key));
        link.setData("garboard.id", "due:" + key);
        tint.ink(link);
    }
}
