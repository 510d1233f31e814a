// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.driver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Widget;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Image;

import garboard.workbench.scenarios.Ids;

/** Looks through the visible windows, the one in front first. On the window's thread. */
final class Finder {

    private final Display display;

    Finder(Display display) {
        this.display = display;
    }

    /** {@return everything visible, windows in front first} */
    List<Widget> visible() {
        var found = new ArrayList<Widget>();
        List<Shell> shells = new ArrayList<>(Arrays.asList(display.getShells()));
        Shell active = display.getActiveShell();
        shells.sort((one, other) -> Boolean.compare(other == active || modalOver(other), one == active || modalOver(one)));
        shells.stream().filter(Control::isVisible).forEach(shell -> collect(shell, found));
        return found;
    }

    private static boolean modalOver(Shell shell) {
        return shell.getParent() != null && shell.isVisible();
    }

    private static void collect(Control control, List<Widget> into) {
        into.add(control);
        if (control instanceof ToolBar bar) {
            into.addAll(Arrays.asList(bar.getItems()));
        }
        if (control instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                if (child.getVisible()) {
                    collect(child, into);
                }
            }
        }
    }

    /** {@return the first widget with this id, else the first with this text, that the predicate takes} */
    Optional<Widget> find(String what, Predicate<Widget> kind) {
        List<Widget> all = visible();
        Optional<Widget> byId = all.stream().filter(widget -> Ids.of(widget).filter(what::equals).isPresent()).filter(kind).findFirst();
        return byId.or(() -> all.stream().filter(kind).filter(widget -> plain(text(widget)).equals(what) || plain(toolTip(widget)).equals(what)).findFirst())
            .or(() -> labelled(all, what, kind));
    }

    /** {@return what follows a label with this text} */
    private static Optional<Widget> labelled(List<Widget> all, String what, Predicate<Widget> kind) {
        for (int index = 0; index < all.size(); index++) {
            if ((all.get(index) instanceof Label || all.get(index) instanceof CLabel) && plain(text(all.get(index))).equals(what)) {
                return all.subList(index + 1, Math.min(index + 6, all.size())).stream().filter(kind).findFirst();
            }
        }
        return Optional.empty();
    }

    static String text(Widget widget) {
        return switch (widget) {
            case Button button -> button.getText();
            case Label label -> label.getText();
            case CLabel label -> label.getText();
            case Link link -> link.getText().replaceAll("<[^>]*>", "");
            case Text text -> text.getText();
            case StyledText text -> text.getText();
            case Combo combo -> combo.getText();
            case ToolItem item -> item.getText();
            case Shell shell -> shell.getText();
            case org.eclipse.swt.widgets.Group group -> group.getText();
            default -> "";
        };
    }

    private static String toolTip(Widget widget) {
        String tip = widget instanceof ToolItem item ? item.getToolTipText() : widget instanceof Control control ? control.getToolTipText() : null;
        // The key that does the same stands behind the name in brackets.
        return tip == null ? "" : tip.replaceAll("\\s*\\([^)]*\\)$", "");
    }

    /** {@return a text without its mnemonic, key name and the dots of what asks further} */
    static String plain(String text) {
        return text.replace("&", "").replaceAll("\t.*$", "").replaceAll("\\s*(…|\\.\\.\\.)$", "").strip();
    }

    /** {@return everything that can be read in the visible windows, for messages and for {@code sees}} */
    List<String> texts() {
        var texts = new ArrayList<String>();
        for (Widget widget : visible()) {
            texts.add(text(widget));
            if (widget instanceof org.eclipse.swt.widgets.Table || widget instanceof org.eclipse.swt.widgets.Tree) {
                texts.addAll(Rows.of(widget));
            }
        }
        texts.removeIf(String::isBlank);
        return texts;
    }

    /** The screen as it is. */
    Image picture() {
        var bounds = display.getBounds();
        var image = new Image(display, bounds.width, bounds.height);
        var gc = new org.eclipse.swt.graphics.GC(display);
        gc.copyArea(image, 0, 0);
        gc.dispose();
        return image;
    }
}
