// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

import garboard.checks.Standing;
import garboard.session.OpenRecord;
import garboard.session.handover.OpenPoint;
import garboard.session.handover.OpenPoint.Topic;
import garboard.session.handover.SignOff;
import garboard.session.verdicts.VerdictKey;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Mark;

/** What stands in the way of a signature: a group for each topic, in it a sentence for each point, which leads to where it is mended. */
final class OpenPointsView {

    /** So many points of a topic are shown at first. */
    private static final int FIRST = 6;
    private static final int HEADING = 110;

    private final Desk desk;
    private final OpenPointWords words;
    private final Tint tint;
    private final Composite area;
    private final Map<Topic, List<OpenPoint>> shown = new EnumMap<>(Topic.class);
    private final Map<Topic, Composite> groups = new EnumMap<>(Topic.class);
    private final Set<Topic> whole = EnumSet.noneOf(Topic.class);

    OpenPointsView(Composite parent, OpenRecord record, Desk desk, Tint tint) {
        this.desk = desk;
        this.tint = tint;
        words = new OpenPointWords(record, desk);
        area = Sheet.area(parent, 1);
        area.setData("garboard.id", "signoff.open");
        for (Topic topic : Topic.values()) {
            var group = Sheet.area(area, 1);
            group.setData("garboard.id", "signoff." + topic.name());
            GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(group);
            group.setVisible(false);
            groups.put(topic, group);
        }
    }

    OpenPointWords words() {
        return words;
    }

    /** Shows how the record stands; what did not change stays as it is. */
    void show(SignOff signOff) {
        boolean changed = false;
        Map<Topic, List<OpenPoint>> now = signOff.byTopic();
        for (Topic topic : Topic.values()) {
            List<OpenPoint> points = now.getOrDefault(topic, List.of());
            if (!points.equals(shown.getOrDefault(topic, List.of()))) {
                shown.put(topic, points);
                fill(topic, signOff.count(topic));
                changed = true;
            }
        }
        if (changed) {
            area.requestLayout();
        }
    }

    private void fill(Topic topic, int count) {
        Composite group = groups.get(topic);
        for (Control child : group.getChildren()) {
            child.dispose();
        }
        List<OpenPoint> points = shown.get(topic);
        GridDataFactory.fillDefaults().grab(true, false).exclude(points.isEmpty()).applyTo(group);
        group.setVisible(!points.isEmpty());
        if (points.isEmpty()) {
            return;
        }
        Label heading = Sheet.words(group, words.heading(topic, count));
        Lettering.heading(heading, HEADING);
        tint.with(heading, palette -> topic == Topic.DANGER || topic == Topic.PROGRAM ? palette.of(Standing.FALLS_SHORT) : palette.ink());
        GridDataFactory.createFrom((GridData) heading.getLayoutData()).indent(0, Lettering.height(group, 0.5)).applyTo(heading);
        tint.faint(Sheet.words(group, words.about(topic)));
        int limit = whole.contains(topic) || points.size() <= FIRST + 1 ? points.size() : FIRST;
        points.subList(0, limit).forEach(point -> row(group, point));
        if (limit < points.size()) {
            Link more = Sheet.link(group, "", desk.texts(OpenPointsView.class).get("points.all", points.size()), () -> showAll(topic, count));
            more.setData("garboard.id", "signoff.all." + topic.name());
            tint.ink(more);
            GridDataFactory.createFrom((GridData) more.getLayoutData()).indent(markWidth(group), 0).applyTo(more);
        }
    }

    private void showAll(Topic topic, int count) {
        whole.add(topic);
        fill(topic, count);
        area.requestLayout();
        groups.get(topic).setFocus();
    }

    private static int markWidth(Composite group) {
        return Lettering.height(group, 1.4);
    }

    private void row(Composite group, OpenPoint point) {
        var row = new Composite(group, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).hint(markWidth(group), Lettering.height(group, 1.1))
            .applyTo(mark(row, words.mark(point)));
        Link link = Sheet.link(row, words.sentence(point), words.place(point), () -> go(point));
        link.setData("garboard.id", "point:" + point.place().orElse(point.matter().name()));
        tint.ink(link);
    }

    private Canvas mark(Composite row, Optional<Standing> standing) {
        var canvas = new Canvas(row, SWT.NO_FOCUS);
        canvas.addListener(SWT.Paint, event -> standing.ifPresent(shape -> {
            int size = canvas.getClientArea().height * 3 / 4;
            Mark.draw(event.gc, desk.palette(), shape, 1, (canvas.getClientArea().height - size) / 2, size);
        }));
        return canvas;
    }

    private void go(OpenPoint point) {
        point.place().ifPresent(desk::goTo);
        point.verdict().map(VerdictKey::of).ifPresent(desk::lookAt);
    }
}
