// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.drawing;

import java.awt.geom.Point2D;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;

import garboard.report.drawing.LiveSheet;
import garboard.report.drawing.LiveSheet.Scale;
import garboard.report.drawing.PartWords;
import garboard.report.drawing.Spot;
import garboard.report.drawing.View;
import garboard.session.drawing.DrawingState;
import garboard.session.drawing.PointMove;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** What the pointer does on the drawings: tell, choose and go to the field, move a part, heel the boat on the clearance plot. */
final class DrawingPointer {

    /** So far the pointer may go in points while a press is still a press. */
    private static final int STILL = 4;

    /** A press that has not ended. */
    private record Press(int x, int y, Optional<Spot> spot, Optional<Scale> scale) {
    }

    private final DrawingSurface surface;
    private final Canvas canvas;
    private final Desk desk;
    private final Texts.Of texts;
    private Optional<Press> press = Optional.empty();
    private Optional<PointMove> move = Optional.empty();
    private boolean heeling;

    DrawingPointer(DrawingSurface surface, Desk desk) {
        this.surface = surface;
        this.canvas = surface.canvas();
        this.desk = desk;
        this.texts = desk.texts(DrawingPointer.class);
        canvas.addListener(SWT.MouseDown, this::down);
        canvas.addListener(SWT.MouseMove, this::moved);
        canvas.addListener(SWT.MouseUp, this::up);
        canvas.addListener(SWT.MouseExit, event -> surface.pointAt(Optional.empty()));
    }

    private void down(Event event) {
        if (event.button != 1 || surface.state().isEmpty()) {
            return;
        }
        canvas.setFocus();
        Optional<Spot> spot = surface.spotAt(event.x, event.y);
        Point2D at = surface.onSheet(event.x, event.y);
        press = Optional.of(new Press(event.x, event.y, spot, surface.sheet().flatMap(sheet -> sheet.scaleAt(at.getX(), at.getY()))));
        DrawingState state = surface.state().get();
        if (spot.isPresent()) {
            state.choose(spot.map(Spot::id));
        } else {
            heeling = heel(at);
            if (!heeling) {
                state.choose(Optional.empty());
            }
        }
    }

    private boolean heel(Point2D at) {
        OptionalDouble heel = surface.sheet().map(sheet -> sheet.heelAt(at.getX(), at.getY())).orElse(OptionalDouble.empty());
        heel.ifPresent(radians -> surface.state().ifPresent(state ->
            state.attitude().set(Math.rint(Math.toDegrees(radians)), state.attitude().trim(), state.arrangement().water())));
        return heel.isPresent();
    }

    private void moved(Event event) {
        if (press.isEmpty()) {
            point(event);
            return;
        }
        Press begun = press.get();
        if (heeling) {
            heel(surface.onSheet(event.x, event.y));
        } else if (move.isPresent()) {
            drag(begun, event);
        } else if (Math.hypot(event.x - begun.x, event.y - begun.y) > STILL) {
            begin(begun, event);
        }
    }

    private void begin(Press begun, Event event) {
        if (begun.spot.flatMap(Spot::mark).isEmpty() || begun.scale.isEmpty()) {
            return;
        }
        Spot spot = begun.spot.get();
        DrawingState state = surface.state().orElseThrow();
        move = state.move(spot.id(), begun.scale.get().view(), desk.settings().units(), texts.get("step.move", spot.name()));
        if (move.isPresent()) {
            surface.hold(true);
            canvas.setToolTipText(null);
            canvas.setCursor(canvas.getDisplay().getSystemCursor(begun.scale.get().metresAcross().isPresent() ? SWT.CURSOR_SIZEALL : SWT.CURSOR_SIZENS));
            drag(begun, event);
        }
    }

    private void drag(Press begun, Event event) {
        PointMove moving = move.orElseThrow();
        Scale scale = begun.scale.orElseThrow();
        double finest = scale.metresUp() / surface.unit();
        boolean both = (event.stateMask & SWT.SHIFT) != 0 && scale.metresAcross().isPresent();
        OptionalDouble across = both ? OptionalDouble.of((event.x - begun.x) / surface.unit() * scale.metresAcross().getAsDouble())
            : OptionalDouble.empty();
        moving.drag((begun.y - event.y) / surface.unit() * scale.metresUp(), across, finest);
        surface.tell(Optional.of(new DrawingSurface.Value(begun.spot.orElseThrow().id(), written(moving, scale.view(), both))));
    }

    private String written(PointMove moving, View view, boolean both) {
        String text = DrawingSurface.text(moving, view, both);
        return moving.goingWithIt().isEmpty() ? text : texts.get("value.withOthers", text, moving.goingWithIt().size());
    }

    private void up(Event event) {
        if (event.button != 1 || press.isEmpty()) {
            return;
        }
        Press ended = press.get();
        boolean moved = move.isPresent();
        boolean stayed = Math.hypot(event.x - ended.x, event.y - ended.y) <= STILL;
        end();
        if (!moved && stayed) {
            ended.spot.ifPresent(spot -> desk.goTo(spot.field()));
        }
    }

    private void end() {
        press = Optional.empty();
        heeling = false;
        if (move.isPresent()) {
            move = Optional.empty();
            surface.hold(false);
            surface.tell(Optional.empty());
            canvas.setCursor(null);
        }
    }

    /** Puts a part that is being moved back where it was. @return whether one was */
    boolean giveUp() {
        boolean moving = move.isPresent();
        move.ifPresent(PointMove::giveUp);
        end();
        return moving;
    }

    private void point(Event event) {
        Optional<Spot> spot = surface.spotAt(event.x, event.y);
        surface.pointAt(spot.map(Spot::id));
        canvas.setCursor(spot.isPresent() ? canvas.getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null);
        String tip = spot.map(this::tip).orElse(null);
        if (!java.util.Objects.equals(tip, canvas.getToolTipText())) {
            canvas.setToolTipText(tip);
        }
    }

    /** All there is to say of a part; an ampersand is none that marks a key. */
    private String tip(Spot spot) {
        DrawingState state = surface.state().orElseThrow();
        LiveSheet sheet = surface.sheet().orElseThrow();
        return state.arrangement().part(spot.id()).filter(part -> part.z().isPresent())
            .map(part -> String.join("\n", new PartWords(sheet.showing()).details(part)))
            .orElseGet(() -> texts.get("tip.lack", spot.name())).replace("&", "&&");
    }
}
