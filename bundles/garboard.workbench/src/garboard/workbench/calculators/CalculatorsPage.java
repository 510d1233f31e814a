// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.calculators;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.session.calculators.CalculatorList;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.page.Page;
import garboard.workbench.page.PageTitle;

/** All named calculations: a list to search on the left, the chosen one as a small page on the right. */
public final class CalculatorsPage implements Page {

    private static final int[] SHARES = {36, 64};

    private final OpenRecord record;
    private final Desk desk;
    private CalculatorTree tree;
    private Composite right;
    private Optional<CalculatorSheet> sheet = Optional.empty();
    private Subscription palette;

    public CalculatorsPage(OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
    }

    @Override
    public Control create(Composite parent) {
        var page = new Composite(parent, SWT.NONE);
        page.setData("garboard.id", "page:" + Stop.CALCULATORS.name());
        page.setBackgroundMode(SWT.INHERIT_DEFAULT);
        int margin = Lettering.height(page, 0.7);
        GridLayoutFactory.fillDefaults().margins(margin, margin).spacing(0, margin / 2).applyTo(page);
        PageTitle.make(page, desk, Stop.CALCULATORS);
        var halves = new SashForm(page, SWT.HORIZONTAL | SWT.SMOOTH);
        halves.setSashWidth(margin);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
        tree = new CalculatorTree(halves, desk, this::open);
        right = new Composite(halves, SWT.NONE);
        right.setLayout(new FillLayout());
        halves.setWeights(SHARES);
        palette = desk.onPalette(now -> page.setBackground(now.ground()));
        page.setBackground(desk.palette().ground());
        desk.calculators().last().ifPresentOrElse(tree::choose, this::invite);
        return page;
    }

    private void invite() {
        var label = new Label(right, SWT.WRAP);
        label.setText(desk.texts(CalculatorsPage.class).get("page.invite", desk.calculators().list().entries().size()));
        label.setForeground(desk.palette().faint());
    }

    private void open(CalculatorList.Entry entry) {
        for (Control before : right.getChildren()) {
            before.dispose();
        }
        sheet = Optional.of(new CalculatorSheet(right, record, desk, desk.calculators().open(entry)));
        right.layout(true, true);
    }

    @Override
    public void setFocus() {
        tree.setFocus();
    }

    @Override
    public void shown() {
        // Another record's page, or this one before, may have changed what is typed.
        desk.calculators().last().filter(last -> sheet.filter(one -> one.isOf(last)).isEmpty()).ifPresent(tree::choose);
        sheet.ifPresent(CalculatorSheet::show);
    }

    @Override
    public void close() {
        palette.close();
    }
}
