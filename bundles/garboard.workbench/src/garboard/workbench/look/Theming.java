// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.look;

import java.util.Optional;

import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;

import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;

/**
 * Keeps the window light or dark: as set, or as the desktop is and becomes. The theme's id tells the platform bundles of GTK and Windows,
 * which look for "dark" in it, to turn the native widgets, too.
 */
public final class Theming implements AutoCloseable {

    private static final String LIGHT = "garboard.theme.light";
    private static final String DARK = "garboard.theme.dark";
    /** A change of the desktop comes as several events, and our own change makes another one. */
    private static final int SETTLED_MILLIS = 400;

    private final Display display;
    private final Desk desk;
    private final Subscription settings;
    private Optional<IThemeEngine> engine = Optional.empty();
    private boolean settling;
    private boolean gtkIsDark;

    public Theming(Display display, Desk desk) {
        this.display = display;
        this.desk = desk;
        // Before any theme of ours is at work, the widgets show what the desktop wants.
        this.gtkIsDark = Display.isSystemDarkTheme() || widgetsAreDark();
        this.settings = desk.settings().onChange(changed -> turn());
        display.addListener(SWT.Settings, event -> desktopChanged());
    }

    /** Takes the engine when the platform has made it, and sets the theme before the first window is shown. */
    public void begin(IThemeEngine made) {
        if (engine.isEmpty()) {
            engine = Optional.of(made);
            turn();
        }
    }

    private void turn() {
        boolean dark = switch (desk.settings().shade()) {
            case LIGHT -> false;
            case DARK -> true;
            case AS_DESKTOP -> desktopIsDark();
        };
        String wanted = dark ? DARK : LIGHT;
        Optional<IThemeEngine> toTurn = engine.filter(one -> one.getActiveTheme() == null || !wanted.equals(one.getActiveTheme().getId()));
        toTurn.ifPresent(one -> {
            settle();
            one.setTheme(wanted, false);
        });
        Palette palette = dark ? Palette.DARK : Palette.LIGHT;
        // A theme that is set takes the colours off every widget: they are given anew even when they are the same as before.
        if (palette != desk.palette() || toTurn.isPresent()) {
            desk.setPalette(palette);
        }
    }

    /** GTK tells only at the start how the desktop is; the other systems tell how it is now. */
    private boolean desktopIsDark() {
        return onGtk() ? gtkIsDark : Display.isSystemDarkTheme();
    }

    private static boolean onGtk() {
        return "gtk".equals(SWT.getPlatform());
    }

    private void desktopChanged() {
        if (settling || desk.settings().shade() != Settings.Shade.AS_DESKTOP || engine.isEmpty()) {
            return;
        }
        if (!onGtk()) {
            turn();
        } else if (desk.palette().dark()) {
            // As long as we ask for dark widgets, they do not show what the desktop wants.
            settle();
            engine.get().setTheme(LIGHT, false);
            display.timerExec(SETTLED_MILLIS / 2, this::look);
        } else {
            look();
        }
    }

    private void look() {
        gtkIsDark = widgetsAreDark();
        turn();
    }

    private void settle() {
        settling = true;
        display.timerExec(SETTLED_MILLIS, () -> settling = false);
    }

    private boolean widgetsAreDark() {
        return lightness(display.getSystemColor(SWT.COLOR_WIDGET_BACKGROUND).getRGB()) < lightness(display.getSystemColor(SWT.COLOR_WIDGET_FOREGROUND).getRGB());
    }

    /** Rec. 601 luma, good enough to tell ink from paper. */
    private static double lightness(RGB colour) {
        return 0.299 * colour.red + 0.587 * colour.green + 0.114 * colour.blue;
    }

    @Override
    public void close() {
        settings.close();
    }
}
