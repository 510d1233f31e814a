// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.drawing;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;

import garboard.report.drawing.LiveSheet;
import garboard.report.drawing.PartWords;
import garboard.report.drawing.Spot;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** Says to those who do not see it what the drawings show: all of it, and part by part as the keyboard goes through them. */
final class DrawingSpeech {

    private final DrawingSurface surface;
    private final Canvas canvas;
    private final Texts.Of texts;
    private Optional<String> said = Optional.empty();

    DrawingSpeech(DrawingSurface surface, Desk desk) {
        this.surface = surface;
        this.canvas = surface.canvas();
        this.texts = desk.texts(DrawingSpeech.class);
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = spot(event.childID).map(spot -> spot.name()).orElseGet(() -> texts.get("drawing.name"));
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = spot(event.childID).map(DrawingSpeech.this::description)
                    .orElseGet(() -> surface.sheet().map(LiveSheet::inWords).orElse(""));
            }

            @Override
            public void getHelp(AccessibleEvent event) {
                event.result = texts.get("drawing.help");
            }
        });
        canvas.getAccessible().addAccessibleControlListener(new Parts());
    }

    /** Tells that another part has the attention, when it has. */
    void follow() {
        Optional<String> chosen = surface.chosenSpot().map(Spot::id);
        if (!chosen.equals(said)) {
            said = chosen;
            canvas.getAccessible().setFocus(chosen.map(this::index).orElse(ACC.CHILDID_SELF));
        }
    }

    private List<Spot> spots() {
        return surface.sheet().map(LiveSheet::spots).orElse(List.of());
    }

    private Optional<Spot> spot(int child) {
        List<Spot> spots = spots();
        return child >= 0 && child < spots.size() ? Optional.of(spots.get(child)) : Optional.empty();
    }

    private int index(String id) {
        List<Spot> spots = spots();
        for (int index = 0; index < spots.size(); index++) {
            if (spots.get(index).id().equals(id)) {
                return index;
            }
        }
        return ACC.CHILDID_SELF;
    }

    private String description(Spot spot) {
        return surface.state().flatMap(state -> state.arrangement().part(spot.id())).filter(part -> part.z().isPresent())
            .flatMap(part -> surface.sheet().map(sheet -> new PartWords(sheet.showing()).sentence(part)))
            .orElseGet(() -> texts.get("tip.lack", spot.name()));
    }

    private final class Parts extends AccessibleControlAdapter {
        @Override
        public void getChildCount(AccessibleControlEvent event) {
            event.detail = spots().size();
        }

        @Override
        public void getChildren(AccessibleControlEvent event) {
            event.children = new Object[spots().size()];
            for (int index = 0; index < event.children.length; index++) {
                event.children[index] = index;
            }
        }

        @Override
        public void getRole(AccessibleControlEvent event) {
            event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_LIST : ACC.ROLE_LISTITEM;
        }

        @Override
        public void getState(AccessibleControlEvent event) {
            event.detail = ACC.STATE_FOCUSABLE | ACC.STATE_SELECTABLE;
            boolean chosen = spot(event.childID).map(Spot::id).equals(surface.chosenSpot().map(Spot::id)) && event.childID >= 0;
            if (chosen) {
                event.detail |= ACC.STATE_SELECTED | (canvas.isFocusControl() ? ACC.STATE_FOCUSED : 0);
            }
        }

        @Override
        public void getFocus(AccessibleControlEvent event) {
            event.childID = canvas.isFocusControl() ? surface.chosenSpot().map(spot -> index(spot.id())).orElse(ACC.CHILDID_SELF) : ACC.CHILDID_NONE;
        }

        @Override
        public void getLocation(AccessibleControlEvent event) {
            Rectangle area = spot(event.childID).map(spot -> {
                double unit = surface.unit();
                return new Rectangle((int) (spot.area().getX() * unit), (int) (spot.area().getY() * unit), (int) (spot.area().getWidth() * unit),
                    (int) (spot.area().getHeight() * unit));
            }).orElseGet(canvas::getClientArea);
            Point at = canvas.toDisplay(area.x, area.y);
            event.x = at.x;
            event.y = at.y;
            event.width = area.width;
            event.height = area.height;
        }

        @Override
        public void getChildAtPoint(AccessibleControlEvent event) {
            Point at = canvas.toControl(event.x, event.y);
            event.childID = surface.spotAt(at.x, at.y).map(spot -> index(spot.id())).orElse(ACC.CHILDID_SELF);
        }
    }
}
