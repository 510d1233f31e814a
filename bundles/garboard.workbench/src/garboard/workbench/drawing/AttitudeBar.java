// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.drawing;

import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;

import garboard.physics.geometry.Attitude;
import garboard.report.drawing.Arrangement;
import garboard.report.drawing.Water;
import garboard.session.drawing.AngleText;
import garboard.session.drawing.AttitudeChoice;
import garboard.session.drawing.DrawingState;
import garboard.workbench.look.Palette;
import garboard.workbench.text.Texts;

/** Heel and trim at which the drawings show the boat. Nothing here changes the record. */
final class AttitudeBar {

    private final Composite row;
    private final AngleField heel;
    private final AngleField trim;
    private final Texts.Of texts;
    private Optional<DrawingState> state = Optional.empty();

    AttitudeBar(Composite parent, Texts.Of texts, Palette palette) {
        this.texts = texts;
        row = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).spacing(16, 2).applyTo(row);
        heel = new AngleField(row, "drawing.heel", AngleText.HEEL, texts, palette, degrees -> state.ifPresent(now ->
            now.attitude().set(degrees, now.attitude().trim(), now.arrangement().water())));
        trim = new AngleField(row, "drawing.trim", AngleText.TRIM, texts, palette, degrees -> state.ifPresent(now ->
            now.attitude().set(now.attitude().heel(), degrees, now.arrangement().water())));
        heel.name(texts.get("angle.heel"));
        trim.name(texts.get("angle.trim"));
        GridDataFactory fill = GridDataFactory.fillDefaults().grab(true, false);
        fill.applyTo(heel.control());
        fill.applyTo(trim.control());
        row.addListener(SWT.Resize, event -> fit());
    }

    /** One below the other where they do not fit beside each other. */
    private void fit() {
        int needed = 2 * heel.control().computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        int columns = row.getClientArea().width < needed ? 1 : 2;
        var layout = (GridLayout) row.getLayout();
        if (layout.numColumns != columns) {
            layout.numColumns = columns;
            row.getParent().layout(true, true);
        }
    }

    Composite control() {
        return row;
    }

    /** Shows the attitude as it is now, with what the record says of it. */
    void show(Optional<DrawingState> now) {
        state = now;
        if (now.isEmpty()) {
            return;
        }
        AttitudeChoice attitude = now.get().attitude();
        Arrangement arrangement = now.get().arrangement();
        Water water = arrangement.water();
        Optional<Attitude> worst = AttitudeChoice.worstAttitude(arrangement, now.get().chosen());
        String point = AttitudeChoice.pointInQuestion(arrangement, now.get().chosen()).map(part -> part.name()).orElse("");
        heel.name(texts.get(water.rolls() ? "angle.roll" : "angle.heel"));
        double designedHeel = Math.toDegrees(water.heel().si());
        double designedTrim = Math.toDegrees(water.trim().si());
        heel.show(attitude.heel(), new AngleBar.Marks(AttitudeChoice.heelReach(water), designedHeel, degrees(worst.filter(at -> designedHeel > 0).map(Attitude::heel))),
            tip(designedHeel, worst.isPresent() && designedHeel > 0, point));
        trim.show(attitude.trim(), new AngleBar.Marks(AttitudeChoice.trimReach(water), designedTrim, degrees(worst.filter(at -> designedTrim > 0).map(Attitude::trim))),
            tip(designedTrim, worst.isPresent() && designedTrim > 0, point));
    }

    private static OptionalDouble degrees(Optional<garboard.quantity.Angle> angle) {
        return angle.map(found -> OptionalDouble.of(Math.toDegrees(found.si()))).orElse(OptionalDouble.empty());
    }

    private String tip(double designed, boolean worst, String point) {
        String limits = designed > 0 ? texts.get("angle.designed", AngleText.written(designed)) : texts.get("angle.notDesigned");
        return worst ? limits + "\n" + texts.get("angle.worst", point) : limits;
    }

    void paintIn(Palette palette) {
        heel.paintIn(palette);
        trim.paintIn(palette);
    }
}
