// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.look;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

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
    private static final boolean ON_GTK = "gtk".equals(SWT.getPlatform());

    private final Display display;
    private final Desk desk;
    private final Subscription settings;
    private Optional<IThemeEngine> engine = Optional.empty();
    /** How the desktop is, as far as GTK shows it: its widgets tell only as long as we do not ask for dark ones. */
    private boolean gtkIsDark;
    private boolean askedForDark;
    private List<RGB> seen;
    /** Whether the next change of the widgets is the one that we asked for. */
    private boolean awaited;
    private boolean probing;

    public Theming(Display display, Desk desk) {
        this.display = display;
        this.desk = desk;
        this.gtkIsDark = Display.isSystemDarkTheme() || widgetsAreDark();
        this.seen = colours();
        this.settings = desk.settings().onChange(changed -> turn());
        display.addListener(SWT.Settings, event -> widgetsChanged());
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
            case AS_DESKTOP -> ON_GTK ? gtkIsDark : Display.isSystemDarkTheme();
        };
        boolean changed = setTheme(dark);
        Palette palette = dark ? Palette.DARK : Palette.LIGHT;
        if (changed || palette != desk.palette()) {
            // Told again also when it is the same: setting a theme takes away the colours that widgets were given.
            desk.setPalette(palette);
        }
    }

    private boolean setTheme(boolean dark) {
        String wanted = dark ? DARK : LIGHT;
        boolean there = engine.isEmpty() || engine.get().getActiveTheme() != null && wanted.equals(engine.get().getActiveTheme().getId());
        if (!there) {
            awaited = ON_GTK && dark != askedForDark;
            askedForDark = dark;
            engine.get().setTheme(wanted, false);
        }
        return !there;
    }

    /** The desktop changed, or the widgets did what we asked for. */
    private void widgetsChanged() {
        if (!ON_GTK) {
            turn();
            return;
        }
        List<RGB> now = colours();
        boolean ours = awaited;
        boolean news = !now.equals(seen);
        awaited = false;
        seen = now;
        if (probing) {
            probing = false;
            gtkIsDark = widgetsAreDark();
            turn();
        } else if (!ours && news && desk.settings().shade() == Settings.Shade.AS_DESKTOP) {
            followDesktop();
        }
    }

    private void followDesktop() {
        if (askedForDark) {
            // For a moment without asking, to see what the desktop wants now.
            probing = setTheme(false);
        } else {
            gtkIsDark = widgetsAreDark();
            turn();
        }
    }

    private List<RGB> colours() {
        return IntStream.of(SWT.COLOR_WIDGET_BACKGROUND, SWT.COLOR_WIDGET_FOREGROUND, SWT.COLOR_LIST_BACKGROUND, SWT.COLOR_LIST_SELECTION)
            .mapToObj(colour -> display.getSystemColor(colour).getRGB()).toList();
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
