// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Link;

import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;
import garboard.workbench.look.Palette;

/** The colours of the words on a page, which follow the palette. */
final class Tint {

    private final Desk desk;
    private final Map<Control, Function<Palette, Color>> inks = new LinkedHashMap<>();

    /** @param page the control with which it ends */
    Tint(Control page, Desk desk) {
        this.desk = desk;
        Subscription palette = desk.onPalette(now -> {
            inks.keySet().removeIf(Control::isDisposed);
            inks.forEach(this::paint);
        });
        page.addDisposeListener(event -> palette.close());
    }

    <C extends Control> C ink(C control) {
        return with(control, Palette::ink);
    }

    <C extends Control> C faint(C control) {
        return with(control, Palette::faint);
    }

    <C extends Control> C accent(C control) {
        return with(control, Palette::accent);
    }

    /** Gives a control's words a colour. */
    <C extends Control> C with(C control, Function<Palette, Color> colour) {
        if (inks.put(control, colour) == null) {
            control.addDisposeListener(event -> inks.remove(control));
        }
        paint(control, colour);
        return control;
    }

    private void paint(Control control, Function<Palette, Color> colour) {
        control.setForeground(colour.apply(desk.palette()));
        if (control instanceof Link link) {
            link.setLinkForeground(desk.palette().accent());
        }
    }
}
