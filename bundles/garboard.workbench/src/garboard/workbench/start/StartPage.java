// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import garboard.checks.Standing;
import garboard.examples.Example;
import garboard.examples.Examples;
import garboard.session.files.RecordName;
import garboard.workbench.Desk;
import garboard.workbench.look.Emblem;
import garboard.workbench.look.Icons;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Palette;
import garboard.workbench.shell.LeftBehind;
import garboard.workbench.text.Texts;

/** The first page: what can be begun, what was open last, what this is for, what can kill. Made anew when any of it changes. */
final class StartPage {

    /** Wider lines are no easier to read, so the page keeps to the middle of a wide window. */
    private static final int WIDEST_LETTERS = 150;
    private static final int TWO_COLUMNS_FROM = 96;

    private final Desk desk;
    private final Texts.Of texts;
    private final StartActions actions;
    private final ScrolledComposite scrolled;
    private final Composite page;
    private final Palette palette;
    private Composite columns;
    private Tile first;
    private int fitted;

    StartPage(ScrolledComposite scrolled, Desk desk, StartActions actions, List<LeftBehind.Found> left) {
        this.scrolled = scrolled;
        this.desk = desk;
        this.texts = desk.texts(StartPage.class);
        this.actions = actions;
        this.palette = desk.palette();
        page = new Composite(scrolled, SWT.NONE);
        page.setBackground(palette.ground());
        page.setBackgroundMode(SWT.INHERIT_FORCE);
        masthead();
        left.forEach(one -> new LeftoverBand(page, desk, actions, one));
        columns = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(columns);
        begin(column());
        explain(column());
    }

    Composite control() {
        return page;
    }

    /** {@return whether something on the page has the focus} */
    boolean holdsFocus() {
        for (Control one = page.getDisplay().getFocusControl(); one != null; one = one.getParent()) {
            if (one == page) {
                return true;
            }
        }
        return false;
    }

    /** Puts the focus where a person would begin. */
    void setFocus() {
        first.setFocus();
    }

    /** Brings the page to the width of the window: two columns where there is room, and wide margins where there is more. */
    void fit() {
        int width = scrolled.getClientArea().width;
        if (width == 0 || width == fitted) {
            return;
        }
        fitted = width;
        int letters = width / Math.max(1, Lettering.width(page, 1));
        boolean two = letters >= TWO_COLUMNS_FROM;
        int side = Math.max(Lettering.width(page, two ? 4 : 2), (width - Lettering.width(page, WIDEST_LETTERS)) / 2);
        GridLayoutFactory.fillDefaults().margins(side, Lettering.height(page, 1)).spacing(0, Lettering.height(page, 0.8)).applyTo(page);
        ((GridLayout) columns.getLayout()).numColumns = two ? 2 : 1;
        scrolled.setMinSize(page.computeSize(width, SWT.DEFAULT));
        page.layout();
    }

    private void masthead() {
        var head = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(Lettering.width(page, 3), 0).applyTo(head);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        var emblem = new Emblem(head, desk);
        GridDataFactory.swtDefaults().hint(Lettering.height(page, 8), Lettering.height(page, 5.2)).applyTo(emblem);
        var words = new Composite(head, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, Lettering.height(page, 0.1)).applyTo(words);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(words);
        var name = new Label(words, SWT.NONE);
        name.setText("Garboard");
        Lettering.scale(name, 290);
        name.setForeground(palette.ink());
        Label line = Block.text(words, texts.get("masthead"), palette.faint());
        Lettering.scale(line, 112);
    }

    private Composite column() {
        if (columns.getLayout() == null) {
            GridLayoutFactory.fillDefaults().equalWidth(true).spacing(Lettering.width(page, 6), Lettering.height(page, 1.4)).applyTo(columns);
        }
        var column = new Composite(columns, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, Lettering.height(page, 1.1)).applyTo(column);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.BEGINNING).applyTo(column);
        return column;
    }

    private void begin(Composite column) {
        var begin = new Block(column, texts.get("begin"), palette);
        Optional<Tile> back = desk.open().map(record -> tile(begin, "start.back", "back-large",
            texts.get("begin.back", RecordName.of(record).orElse(texts.get("record.new"))), "", actions::back));
        Tile fresh = tile(begin, "start.new", "new-large", texts.get("begin.new"), texts.get("begin.new.about"), actions::create);
        tile(begin, "start.open", "open-large", texts.get("begin.open"), texts.get("begin.open.about"), actions::open);
        tile(begin, "start.workbook", "workbook-large", texts.get("begin.workbook"), texts.get("begin.workbook.about"), actions::openWorkbook);
        first = back.orElse(fresh);
        begin.text(texts.get("begin.drop")).setForeground(palette.faint());
        new RecentList(column, desk, actions);
        var examples = new Block(column, texts.get("examples.heading"), palette);
        for (Example example : Examples.all()) {
            tile(examples, "start.example." + example.name(), "example-large", ExampleChoice.title(example, texts), "", () -> actions.open(example))
                .quiet();
        }
    }

    private Tile tile(Block block, String id, String icon, String title, String about, Runnable action) {
        Image picture = Icons.load(block, icon, palette);
        Tile tile = new Tile(block, id, Optional.of(picture), title, about, palette).onPress(action);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(tile);
        return tile;
    }

    private void explain(Composite column) {
        var purpose = new Block(column, texts.get("purpose"), palette);
        purpose.text(texts.get("purpose.record"));
        purpose.text(texts.get("purpose.check"));
        purpose.text(texts.get("purpose.report"));
        var cautions = new Block(column, texts.get("cautions.heading"), palette);
        for (Cautions caution : Cautions.all()) {
            var row = new Composite(cautions, SWT.NONE);
            int bar = Math.max(3, Lettering.width(page, 0.5));
            GridLayoutFactory.fillDefaults().extendedMargins(bar * 3, 0, 0, 0).spacing(0, 0).applyTo(row);
            GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
            row.addPaintListener(event -> {
                event.gc.setBackground(palette.of(Standing.FALLS_SHORT));
                event.gc.fillRoundRectangle(0, 2, bar, row.getClientArea().height - 4, bar, bar);
            });
            Lettering.bold(Block.text(row, caution.lead(texts), palette.ink()));
            Block.text(row, caution.brief(texts), palette.ink());
        }
        tile(cautions, "start.cautions", "cautions", texts.get("cautions.all"), "", actions::cautions).quiet();
        var limits = new Block(column, texts.get("limits"), palette);
        Lettering.bold(limits.text(texts.get("limits.certifies")));
        limits.text(texts.get("limits.decide"));
    }
}
