// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.drawing;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;

import garboard.report.drawing.Spot;
import garboard.report.drawing.View;
import garboard.session.drawing.DrawingState;
import garboard.session.drawing.DrawingState.Nudge;
import garboard.session.drawing.PointMove;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** What the keyboard does on the drawings: go from part to part, to the field of one, move one by small steps. */
final class DrawingKeys {

    private final DrawingSurface surface;
    private final DrawingPointer pointer;
    private final Canvas canvas;
    private final Desk desk;
    private final Texts.Of texts;

    DrawingKeys(DrawingSurface surface, DrawingPointer pointer, Desk desk) {
        this.surface = surface;
        this.pointer = pointer;
        this.canvas = surface.canvas();
        this.desk = desk;
        this.texts = desk.texts(DrawingKeys.class);
        canvas.addListener(SWT.Traverse, this::traverse);
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.FocusOut, event -> surface.tell(Optional.empty()));
    }

    private List<Spot> spots() {
        return surface.sheet().map(sheet -> sheet.spots()).orElse(List.of());
    }

    /** Tab goes through the parts and, behind the last of them, on to the next control. */
    private void traverse(Event event) {
        if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            event.doit = !step(event.detail == SWT.TRAVERSE_TAB_NEXT ? 1 : -1);
        } else if (event.detail == SWT.TRAVERSE_RETURN || event.detail == SWT.TRAVERSE_ESCAPE || event.detail == SWT.TRAVERSE_ARROW_NEXT
                || event.detail == SWT.TRAVERSE_ARROW_PREVIOUS) {
            event.doit = false;
        }
    }

    private boolean step(int by) {
        List<Spot> spots = spots();
        Optional<Spot> here = surface.chosenSpot();
        int next = here.map(spot -> index(spots, spot) + by).orElse(by > 0 ? 0 : spots.size() - 1);
        if (next < 0 || next >= spots.size()) {
            return false;
        }
        choose(spots.get(next));
        return true;
    }

    private static int index(List<Spot> spots, Spot spot) {
        for (int index = 0; index < spots.size(); index++) {
            if (spots.get(index).id().equals(spot.id())) {
                return index;
            }
        }
        return -1;
    }

    private void choose(Spot spot) {
        surface.tell(Optional.empty());
        surface.state().ifPresent(state -> state.choose(Optional.of(spot.id())));
    }

    private void key(Event event) {
        switch (event.keyCode) {
            case SWT.ARROW_UP -> arrow(event, 0, -1);
            case SWT.ARROW_DOWN -> arrow(event, 0, 1);
            case SWT.ARROW_LEFT -> arrow(event, -1, 0);
            case SWT.ARROW_RIGHT -> arrow(event, 1, 0);
            case SWT.HOME -> end(0);
            case SWT.END -> end(spots().size() - 1);
            case SWT.CR, SWT.KEYPAD_CR, ' ' -> surface.chosenSpot().ifPresent(spot -> desk.goTo(spot.field()));
            case SWT.ESC -> escape();
            default -> { }
        }
    }

    private void end(int index) {
        List<Spot> spots = spots();
        if (index >= 0 && index < spots.size()) {
            choose(spots.get(index));
        }
    }

    private void arrow(Event event, int right, int down) {
        if ((event.stateMask & SWT.MOD1) != 0) {
            nudge(right, down, (event.stateMask & SWT.SHIFT) != 0);
            return;
        }
        Optional<Spot> here = surface.chosenSpot();
        if (here.isEmpty()) {
            step(1);
        } else {
            surface.sheet().flatMap(sheet -> sheet.beside(here.get(), right, down)).ifPresent(this::choose);
        }
    }

    /** On the first drawing on which parts can be moved; a drawing of a run has heights only. */
    private void nudge(int right, int down, boolean coarse) {
        Optional<View> view = surface.sheet().flatMap(sheet -> sheet.views().stream().filter(one -> one != View.CLEARANCE).findFirst());
        Optional<Spot> here = surface.chosenSpot().filter(spot -> spot.mark().isPresent());
        if (view.isEmpty() || here.isEmpty()) {
            return;
        }
        DrawingState state = surface.state().orElseThrow();
        surface.hold(true);
        Optional<PointMove> move =
            state.nudge(new Nudge(-down, right, coarse), view.get(), desk.settings().units(), texts.get("step.move", here.get().name()));
        surface.hold(false);
        surface.tell(move.map(moved -> new DrawingSurface.Value(here.get().id(), DrawingSurface.text(moved, view.get(), right != 0))));
    }

    private void escape() {
        if (!pointer.giveUp()) {
            surface.tell(Optional.empty());
            surface.state().ifPresent(state -> state.choose(Optional.empty()));
        }
    }
}
