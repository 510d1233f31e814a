// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.photo;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

import garboard.model.GarboardPackage.Literals;
import garboard.model.InspectionAnswer;
import garboard.model.Photograph;
import garboard.model.RecordPath;
import garboard.session.OpenRecord;
import garboard.session.photo.RecordPhotographs;
import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Spoken;

/** The photographs that lie with an answer, in a row, and what can be done about them: lay one there, look at it, take it away. */
public final class PhotoStrip {

    private static final double LINES = 4.5;

    private final Desk desk;
    private final InspectionAnswer answer;
    private final RecordPhotographs photographs;
    private final Composite area;
    private final Composite pictures;
    private final Button lay;
    private final Label complaint;
    private final PictureIntake intake;
    private final Thumbnails thumbnails;
    private final int edge;
    private List<Photograph> shown = List.of();

    public PhotoStrip(Composite parent, OpenRecord record, Desk desk, Ask ask, InspectionAnswer answer) {
        this.desk = desk;
        this.answer = answer;
        this.photographs = new RecordPhotographs(record);
        area = new Composite(parent, SWT.NONE);
        area.setData("garboard.id", "photographs:" + RecordPath.key(answer));
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 2).applyTo(area);
        edge = Lettering.height(area, LINES);
        pictures = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(0).spacing(6, 0).applyTo(pictures);
        thumbnails = new Thumbnails(pictures, edge, this::repaint);
        lay = new Button(area, SWT.PUSH);
        lay.setText(desk.texts(PhotoStrip.class).get("strip.lay"));
        lay.setData("garboard.id", "lay:" + RecordPath.key(answer));
        lay.addListener(SWT.Selection, event -> offer());
        complaint = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(1, SWT.DEFAULT).exclude(true).applyTo(complaint);
        intake = new PictureIntake(area, desk, ask, found -> photographs.addTo(answer, found, label("step.add")), this::complain);
        intake.dropOn(area);
        show();
    }

    /** {@return the control of the strip, for its layout data} */
    public Composite control() {
        return area;
    }

    private String label(String key) {
        return desk.texts(PhotoStrip.class).get(key);
    }

    /** Shows what lies there now. */
    public void show() {
        if (shown.equals(answer.getPhotographs())) {
            return;
        }
        shown = List.copyOf(answer.getPhotographs());
        for (var old : pictures.getChildren()) {
            old.dispose();
        }
        GridLayoutFactory.fillDefaults().numColumns(Math.max(1, shown.size())).spacing(6, 0).applyTo(pictures);
        shown.forEach(this::picture);
        pictures.requestLayout();
    }

    private void picture(Photograph photograph) {
        var canvas = new Canvas(pictures, SWT.DOUBLE_BUFFERED);
        GridDataFactory.fillDefaults().hint(edge * 4 / 3, edge).applyTo(canvas);
        canvas.setToolTipText(photograph.getCaption());
        canvas.setData("garboard.id", "photograph:" + photograph.getId());
        canvas.addListener(SWT.Paint, event -> {
            Rectangle frame = canvas.getClientArea();
            event.gc.setInterpolation(SWT.HIGH);
            event.gc.setBackground(desk.palette().sheet());
            event.gc.fillRectangle(frame);
            java.util.Optional<Image> image = thumbnails.of(photograph);
            image.ifPresent(picture -> LargeView.fit(event.gc, picture, frame));
            event.gc.setForeground(canvas.isFocusControl() ? desk.palette().accent() : desk.palette().line());
            event.gc.drawRectangle(0, 0, frame.width - 1, frame.height - 1);
        });
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        canvas.addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_RETURN);
        canvas.addListener(SWT.MouseDown, event -> canvas.setFocus());
        canvas.addListener(SWT.MouseDoubleClick, event -> desk.goTo(RecordPath.key(photograph)));
        canvas.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.DEL) {
                photographs.takeAway(answer, photograph, label("step.takeAway"));
                lay.setFocus();
            } else if (event.character == SWT.CR || event.character == ' ') {
                desk.goTo(RecordPath.key(photograph));
            }
        });
        Spoken.name(canvas, photograph.getCaption() == null ? desk.labels().label(Literals.PHOTOGRAPH) : photograph.getCaption());
        canvas.setMenu(menu(canvas, photograph));
    }

    private Menu menu(Canvas canvas, Photograph photograph) {
        var menu = new Menu(canvas);
        item(menu, label("strip.look"), () -> desk.goTo(RecordPath.key(photograph)));
        item(menu, label("strip.takeAway"), () -> photographs.takeAway(answer, photograph, label("step.takeAway")));
        return menu;
    }

    /** The photographs of the record that do not lie here, then files and the clipboard. */
    private void offer() {
        var menu = new Menu(lay);
        item(menu, label("strip.files"), intake::choose);
        item(menu, label("strip.paste"), intake::paste);
        List<Photograph> others = photographs.all().stream().filter(photograph -> !answer.getPhotographs().contains(photograph)).toList();
        if (!others.isEmpty()) {
            new MenuItem(menu, SWT.SEPARATOR);
        }
        others.forEach(photograph -> item(menu, photograph.getCaption() == null ? photograph.getId() : photograph.getCaption(),
            () -> photographs.lay(answer, photograph, label("step.add"))));
        menu.addListener(SWT.Hide, event -> lay.getDisplay().asyncExec(menu::dispose));
        Rectangle place = lay.getDisplay().map(lay.getParent(), null, lay.getBounds());
        menu.setLocation(place.x, place.y + place.height);
        menu.setVisible(true);
    }

    private static void item(Menu menu, String words, Runnable action) {
        var item = new MenuItem(menu, SWT.PUSH);
        item.setText(words.replace("&", "&&"));
        item.addListener(SWT.Selection, event -> action.run());
    }

    private void complain(List<String> sentences) {
        complaint.setText(String.join("\n", sentences));
        complaint.setForeground(desk.palette().of(garboard.checks.Standing.FALLS_SHORT));
        ((org.eclipse.swt.layout.GridData) complaint.getLayoutData()).exclude = sentences.isEmpty();
        complaint.setVisible(!sentences.isEmpty());
        complaint.requestLayout();
    }

    private void repaint() {
        for (var canvas : pictures.getChildren()) {
            canvas.redraw();
        }
    }
}
