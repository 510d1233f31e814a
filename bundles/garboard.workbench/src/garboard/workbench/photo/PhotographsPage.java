// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.photo;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Text;

import garboard.checks.Standing;
import garboard.model.GarboardPackage.Literals;
import garboard.model.InspectionAnswer;
import garboard.model.Photograph;
import garboard.model.RecordPath;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.photo.RecordPhotographs;
import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;
import garboard.workbench.fields.FieldRows;
import garboard.workbench.fields.SheetScroll;
import garboard.workbench.page.Page;
import garboard.workbench.page.PageTitle;
import garboard.workbench.text.Texts;

/** The photographs of the record: taken in by drag, paste and choice; each with caption and date, and large. */
public final class PhotographsPage implements Page {

    private static final Set<EStructuralFeature> SHOWN = Set.of(Literals.COMMISSIONING_RECORD__PHOTOGRAPHS, Literals.PHOTOGRAPH__CAPTION,
        Literals.PHOTOGRAPH__TAKEN_ON, Literals.INSPECTION_ANSWER__PHOTOGRAPHS, Literals.INSPECTION_ANSWER__QUESTION);

    private final OpenRecord record;
    private final Desk desk;
    private final Ask ask;
    private final RecordPhotographs photographs;
    private final Texts.Of texts;
    private final Subscription edits;
    private Composite area;
    private Gallery gallery;
    private LargeView large;
    private Label complaint;
    private Label laidTo;
    private Label hint;
    private Composite about;
    private Button remove;
    private Optional<FieldRows> rows = Optional.empty();
    private Optional<Photograph> shown = Optional.empty();
    private PictureIntake intake;

    public PhotographsPage(OpenRecord record, Desk desk, Ask ask) {
        this.record = record;
        this.desk = desk;
        this.ask = ask;
        this.photographs = new RecordPhotographs(record);
        this.texts = desk.texts(PhotographsPage.class);
        this.edits = record.edits().onChange(change -> {
            if (!Collections.disjoint(change.features(), SHOWN)) {
                follow();
            }
        });
    }

    @Override
    public Control create(Composite parent) {
        area = new Composite(parent, SWT.NONE);
        area.setData("garboard.id", "page:PHOTOGRAPHS");
        GridLayoutFactory.fillDefaults().applyTo(area);
        var sheet = new SheetScroll(area, desk);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sheet.control());
        PageTitle.make(sheet.content(), desk, garboard.session.Stop.PHOTOGRAPHS);
        intake = new PictureIntake(area, desk, ask, this::take, this::complain);
        bar(sheet.content());
        complaint = new Label(sheet.content(), SWT.WRAP);
        complaint.setVisible(false);
        gallery = new Gallery(sheet.content(), desk);
        about = new Composite(sheet.content(), SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(about);
        laidTo = new Label(sheet.content(), SWT.WRAP);
        large = new LargeView(sheet.content(), desk);
        gallery.onSelect(this::choose);
        gallery.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.DEL) {
                remove();
            }
        });
        intake.dropOn(area);
        listenForPaste();
        Subscription palette = desk.onPalette(now -> {
            gallery.redraw();
            laidTo.setForeground(now.faint());
            hint.setForeground(now.faint());
        });
        area.addListener(SWT.Dispose, event -> palette.close());
        follow();
        return area;
    }

    private void bar(Composite parent) {
        var bar = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(6, 2).applyTo(bar);
        button(bar, "choose", () -> intake.choose());
        button(bar, "paste", () -> intake.paste());
        remove = button(bar, "remove", this::remove);
        hint = new Label(bar, SWT.WRAP);
        hint.setText(texts.get("page.hint"));
        hint.setForeground(desk.palette().faint());
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(1, SWT.DEFAULT).applyTo(hint);
    }

    private Button button(Composite bar, String what, Runnable action) {
        var button = new Button(bar, SWT.PUSH);
        button.setText(texts.get("page." + what));
        button.setData("garboard.id", "photographs." + what);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    /** Ctrl+V takes a picture wherever the focus is on this page, but in a text it is the text's own. */
    private void listenForPaste() {
        Listener paste = event -> {
            boolean pasting = (event.stateMask & SWT.MODIFIER_MASK) == SWT.MOD1 && event.keyCode == 'v';
            if (pasting && area.isVisible() && event.widget instanceof Control control && control.getShell() == area.getShell()
                    && isOnPage(control) && !(control instanceof Text)) {
                intake.paste();
            }
        };
        area.getDisplay().addFilter(SWT.KeyDown, paste);
        area.addListener(SWT.Dispose, (Event event) -> event.display.removeFilter(SWT.KeyDown, paste));
    }

    private boolean isOnPage(Control control) {
        for (Control at = control; at != null; at = at.getParent()) {
            if (at == area) {
                return true;
            }
        }
        return false;
    }

    private void take(List<RecordPhotographs.Found> found) {
        List<Photograph> added = photographs.add(found, texts.get("step.add"));
        added.stream().findFirst().ifPresent(gallery::select);
        gallery.setFocus();
    }

    private void remove() {
        gallery.selected().ifPresent(photograph -> photographs.remove(photograph, texts.get("step.remove")));
    }

    private void complain(List<String> sentences) {
        complaint.setText(String.join("\n", sentences));
        complaint.setForeground(desk.palette().of(Standing.FALLS_SHORT));
        complaint.setVisible(!sentences.isEmpty());
        complaint.requestLayout();
    }

    private void follow() {
        if (gallery != null && !gallery.isDisposed()) {
            gallery.show(photographs.all());
            choose(gallery.selected());
        }
    }

    private void choose(Optional<Photograph> photograph) {
        remove.setEnabled(photograph.isPresent());
        List<InspectionAnswer> answers = photograph.map(photographs::answersWith).orElse(List.of());
        laidTo.setText(answers.isEmpty() ? ""
            : texts.get("page.laidTo", String.join("; ", answers.stream().map(InspectionAnswer::getQuestion).filter(Objects::nonNull).toList())));
        laidTo.setForeground(desk.palette().faint());
        laidTo.setVisible(!answers.isEmpty());
        if (!photograph.equals(shown)) {
            shown = photograph;
            rows.ifPresent(old -> old.control().dispose());
            rows = photograph.map(chosen -> new FieldRows(about, record, desk).fields(chosen, Literals.PHOTOGRAPH__CAPTION,
                Literals.PHOTOGRAPH__TAKEN_ON));
            rows.ifPresent(made -> made.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, false)));
            large.show(photograph);
            about.requestLayout();
        }
    }

    @Override
    public boolean reveal(String key) {
        for (Photograph photograph : photographs.all()) {
            String own = RecordPath.key(photograph);
            if (key.equals(own) || key.startsWith(own + ".")) {
                gallery.select(photograph);
                return rows.filter(made -> made.reveal(key)).isPresent() || gallery.setFocus();
            }
        }
        return key.equals("photographs") && gallery.setFocus();
    }

    @Override
    public void setFocus() {
        gallery.setFocus();
    }

    @Override
    public void close() {
        edits.close();
        rows.ifPresent(FieldRows::close);
    }
}
