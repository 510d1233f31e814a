// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import garboard.session.journal.Difference;
import garboard.session.journal.Leftover;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Palette;
import garboard.workbench.shell.LeftBehind;
import garboard.workbench.text.Texts;

/** Offers what was typed and not saved when the program ended without being closed. */
final class LeftoverBand {

    private static final int SHOWN = 4;

    private final Desk desk;
    private final Texts.Of texts;
    private final StartActions actions;
    private final LeftBehind.Found found;
    private final Palette palette;

    LeftoverBand(Composite parent, Desk desk, StartActions actions, LeftBehind.Found found) {
        this.desk = desk;
        this.texts = desk.texts(LeftoverBand.class);
        this.actions = actions;
        this.found = found;
        this.palette = desk.palette();
        var band = new Composite(parent, SWT.NONE);
        band.setBackground(palette.band());
        band.setBackgroundMode(SWT.INHERIT_FORCE);
        int margin = Lettering.width(parent, 2);
        GridLayoutFactory.fillDefaults().extendedMargins(margin + margin / 2, margin, margin, margin).spacing(0, Lettering.height(parent, 0.4)).applyTo(band);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(band);
        band.addPaintListener(event -> {
            event.gc.setBackground(palette.copper());
            event.gc.fillRectangle(0, 0, Math.max(3, margin / 4), band.getClientArea().height);
        });
        Label head = Block.text(band, texts.get("left.title", name()), palette.ink());
        Lettering.heading(head, 115);
        Block.text(band, texts.get("left.when", Moments.words(found.leftover().when(), desk)), palette.ink());
        found.comparison().ifPresentOrElse(comparison -> tell(band, comparison),
            () -> Block.text(band, texts.get("left.unreadable", found.unreadable().orElse("")), palette.ink()));
        buttons(band);
    }

    private String name() {
        String name = found.leftover().name();
        return name.isEmpty() ? texts.get("record.new") : name;
    }

    private void tell(Composite band, Leftover.Comparison comparison) {
        List<Difference> differences = comparison.differences();
        String key = switch (comparison.against()) {
            case ITS_FILE -> "left.file";
            case ITS_CHANGED_FILE -> "left.changedFile";
            case NOTHING -> "left.neverSaved";
            case LOST_FILE -> "left.lostFile";
        };
        Block.text(band, texts.get(key, differences.size(), found.leftover().file().map(Object::toString).orElse("")), palette.ink());
        var words = new DifferenceWords(desk.labels(), texts);
        differences.stream().limit(SHOWN).map(words::line).forEach(line -> Block.text(band, line, palette.faint()));
    }

    private void buttons(Composite band) {
        var row = new Composite(band, SWT.NONE);
        var layout = new RowLayout();
        layout.marginLeft = 0;
        layout.spacing = Lettering.width(band, 1.5);
        row.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        if (found.comparison().isPresent()) {
            button(row, "take", () -> actions.takeUp(found));
            if (found.comparison().get().differences().size() > SHOWN) {
                button(row, "all", () -> actions.showDifferences(found, new DifferenceWords(desk.labels(), texts)));
            }
        }
        button(row, "later", () -> actions.later(found));
        button(row, "discard", () -> actions.discard(found));
    }

    private void button(Composite row, String what, Runnable action) {
        var button = new Button(row, SWT.PUSH);
        button.setText(texts.get("left." + what));
        button.setData("garboard.id", "start.left." + what);
        button.addListener(SWT.Selection, event -> action.run());
    }
}
