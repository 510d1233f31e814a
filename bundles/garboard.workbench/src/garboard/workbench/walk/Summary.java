// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.walk;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import garboard.checks.Evaluation;
import garboard.model.CommissioningRecord;
import garboard.model.GeneratorSet;
import garboard.model.Vessel;
import garboard.session.verdicts.Progress;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** The record in short: which vessel, which set, how far it is. */
final class Summary {

    private final Desk desk;
    private final Texts.Of texts;
    private final Composite area;
    private final Label vessel;
    private final Label set;
    private final Label serial;
    private final ProgressLine line;
    private final Label progress;

    Summary(Composite parent, Desk desk) {
        this.desk = desk;
        this.texts = desk.texts(Summary.class);
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, Lettering.height(parent, 0.15)).applyTo(area);
        vessel = label("walk.vessel");
        Lettering.heading(vessel, 125);
        set = label("walk.set");
        serial = label("walk.serial");
        line = new ProgressLine(area, desk);
        GridDataFactory.fillDefaults().grab(true, false).indent(0, Lettering.height(parent, 0.3)).applyTo(line);
        progress = label("walk.progress");
        paint();
    }

    private Label label(String id) {
        var label = new Label(area, SWT.WRAP);
        label.setData("garboard.id", id);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(label);
        return label;
    }

    Control control() {
        return area;
    }

    /** Shows what is entered of vessel and set. */
    void show(CommissioningRecord record) {
        Optional<Vessel> boat = Optional.ofNullable(record.getVessel());
        Optional<GeneratorSet> generator = Optional.ofNullable(record.getGeneratorSet());
        boolean wider = put(vessel, boat.map(Vessel::getName).filter(name -> !name.isBlank()).orElse(texts.get("vessel.none")));
        String made = texts.get("set.of", generator.map(GeneratorSet::getMaker).orElse(""), generator.map(GeneratorSet::getType).orElse("")).strip();
        wider |= put(set, made.isEmpty() ? texts.get("set.none") : made);
        wider |= put(serial, generator.map(GeneratorSet::getSerialNumber).filter(number -> !number.isBlank())
            .map(number -> texts.get("serial", number)).orElse(texts.get("serial.none")));
        layoutWhen(wider);
    }

    /** Shows how far the checks are. */
    void show(Evaluation evaluation) {
        Progress now = Progress.of(evaluation);
        line.show(now);
        layoutWhen(put(progress, now.apply() == 0 ? texts.get("progress.none")
            : texts.get("progress.line", texts.get("progress", now.decided(), now.apply()), texts.get("progress.action", now.needAction()))));
    }

    private void layoutWhen(boolean changed) {
        if (changed) {
            area.requestLayout();
        }
    }

    private static boolean put(Label label, String words) {
        String escaped = words.replace("&", "&&");
        if (escaped.equals(label.getText())) {
            return false;
        }
        label.setText(escaped);
        return true;
    }

    /** Takes the colours of now. */
    void paint() {
        serial.setForeground(desk.palette().faint());
        progress.setForeground(desk.palette().faint());
        line.redraw();
    }
}
