// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

import garboard.model.CustomaryUnits;
import garboard.quantity.UnitSystem;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.trial.Curves;
import garboard.session.trial.Curves.Along;
import garboard.session.trial.ReadingTopic;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** The readings as small charts, over time or over load; which of them, the person chooses. The tables above hold the same figures. */
final class PlotsView implements View {

    private static final String REMEMBERED = "plot.";
    private static final double NARROWEST_LETTERS = 52;
    private static final double LINES = 15;

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private final Composite charts;
    private final Said none;
    private final Said unplaced;
    private final Map<ReadingTopic, ReadingChart> made = new EnumMap<>(ReadingTopic.class);
    private Along along = Along.TIME;
    private UnitSystem unitsOf;
    private CustomaryUnits units;

    PlotsView(Composite parent, OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
        this.texts = desk.texts(PlotsView.class);
        var bar = new Composite(parent, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(Lettering.width(parent, 2)).center(true).applyTo(bar);
        for (Along way : Along.values()) {
            var button = new Button(bar, SWT.RADIO);
            button.setText(texts.get("plot.along." + way.name()));
            button.setData("garboard.id", "plot.along." + way.name());
            button.setSelection(way == along);
            button.addListener(SWT.Selection, event -> {
                if (button.getSelection()) {
                    along = way;
                    show();
                }
            });
        }
        var choose = new Button(bar, SWT.PUSH);
        choose.setText(texts.get("plot.choose"));
        choose.setToolTipText(texts.get("plot.choose.tip"));
        choose.setData("garboard.id", "plot.choose");
        choose.addListener(SWT.Selection, event -> choose(choose));
        none = new Said(parent, desk, Tone.QUIET);
        unplaced = new Said(parent, desk, Tone.OPEN);
        charts = new Composite(parent, SWT.NONE);
        charts.setLayout(new Tiles(Lettering.width(parent, NARROWEST_LETTERS), Lettering.height(parent, LINES)));
        Subscription palette = desk.onPalette(now -> made.values().forEach(ReadingChart::colour));
        charts.addDisposeListener(event -> palette.close());
        show();
    }

    /** Reading them from their list takes longer than drawing a chart. */
    private CustomaryUnits units() {
        if (unitsOf != desk.settings().units()) {
            unitsOf = desk.settings().units();
            units = CustomaryUnits.of(unitsOf);
        }
        return units;
    }

    private boolean isChosen(ReadingTopic topic) {
        return desk.settings().leftOpen(REMEMBERED + topic.name()).orElse(true);
    }

    private void choose(Button from) {
        var menu = new Menu(from);
        for (ReadingTopic topic : ReadingTopic.values()) {
            var item = new MenuItem(menu, SWT.CHECK);
            item.setText(texts.get("topic." + topic.name()).replace("&", "&&"));
            item.setSelection(isChosen(topic));
            item.addListener(SWT.Selection, event -> {
                desk.settings().leaveOpen(REMEMBERED + topic.name(), item.getSelection());
                show();
            });
        }
        menu.addListener(SWT.Hide, event -> menu.getDisplay().asyncExec(menu::dispose));
        menu.setLocation(from.toDisplay(0, from.getSize().y));
        menu.setVisible(true);
    }

    @Override
    public void show() {
        List<ReadingTopic> read = ReadingTopic.read(record.record());
        List<ReadingTopic> wanted = read.stream().filter(this::isChosen).toList();
        boolean other = !wanted.equals(List.copyOf(made.keySet()));
        made.entrySet().removeIf(entry -> {
            boolean gone = !wanted.contains(entry.getKey());
            if (gone) {
                entry.getValue().dispose();
            }
            return gone;
        });
        int unplacedValues = 0;
        for (ReadingTopic topic : wanted) {
            var curves = Curves.of(topic, along, record.record(), record.verdicts().evaluation(), units());
            unplacedValues += curves.withoutPlace();
            made.computeIfAbsent(topic, one -> new ReadingChart(charts, desk, one)).show(curves);
        }
        none.say(read.isEmpty() ? texts.get("plot.none") : wanted.isEmpty() ? texts.get("plot.noneChosen") : "");
        unplaced.say(unplacedValues == 0 ? "" : texts.get("plot.unplaced." + along.name(), unplacedValues));
        if (other) {
            order(wanted);
        }
    }

    private void order(List<ReadingTopic> wanted) {
        for (int index = wanted.size() - 1; index >= 0; index--) {
            made.get(wanted.get(index)).moveToFront();
        }
        charts.requestLayout();
    }
}
