// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.driver;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.Widget;

import garboard.workbench.scenarios.Hand;
import garboard.workbench.scenarios.KeyStrokes;
import garboard.workbench.scenarios.WindowUnderTest;

/** A hand that sends the widgets the events that a person's hand would cause. */
final class SwtHand implements Hand {

    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final long GLANCE_MS = 15;
    /** A press that opens a modal dialog does not come back before the dialog closes; it is not waited for longer than this. */
    private static final long PRESS_MS = 1500;

    private final WindowUnderTest window;
    private final Finder finder;
    private final AtomicReference<Throwable> broken = new AtomicReference<>();

    SwtHand(WindowUnderTest window) {
        this.window = window;
        this.finder = new Finder(window.display());
    }

    @Override
    public void press(String what) {
        Predicate<Widget> pressable = one -> one instanceof Button || one instanceof ToolItem || one instanceof Link
            || what.equals(one.getData("garboard.id"));
        await(what + " to be there and usable", () -> window.onWindow(() -> finder.find(what, pressable).filter(SwtHand::usable).isPresent()));
        later(() -> {
            // Looked for once more: between two looks a page may have been made anew.
            Widget widget = finder.find(what, pressable).orElseThrow(() -> new AssertionError(what + " is gone again"));
            if (widget instanceof Control control) {
                control.setFocus();
            }
            if (widget instanceof Button button && (button.getStyle() & (SWT.CHECK | SWT.TOGGLE)) != 0) {
                button.setSelection(!button.getSelection());
            } else if (widget instanceof Button button && (button.getStyle() & SWT.RADIO) != 0) {
                Arrays.stream(button.getParent().getChildren()).filter(one -> one instanceof Button other && (other.getStyle() & SWT.RADIO) != 0)
                    .forEach(one -> ((Button) one).setSelection(one == button));
            }
            var event = new Event();
            event.text = what;
            widget.notifyListeners(SWT.Selection, event);
        });
    }

    private static boolean usable(Widget widget) {
        return widget instanceof Control control ? control.isEnabled() : widget instanceof ToolItem item ? item.isEnabled() : true;
    }

    @Override
    public void menu(String... path) {
        AtomicReference<MenuItem> entry = new AtomicReference<>();
        await("the menu entry " + String.join(" > ", path), () -> {
            entry.set(window.onWindow(() -> entry(window.shell().getMenuBar(), path)));
            return entry.get() != null;
        });
        later(() -> {
            if (!entry.get().isEnabled()) {
                throw new AssertionError("The menu entry " + String.join(" > ", path) + " cannot be chosen now");
            }
            entry.get().notifyListeners(SWT.Selection, new Event());
        });
    }

    private static MenuItem entry(Menu menu, String... path) {
        MenuItem found = null;
        Menu here = menu;
        for (String step : path) {
            if (here == null) {
                return null;
            }
            here.notifyListeners(SWT.Show, new Event());
            found = Arrays.stream(here.getItems()).filter(item -> Finder.plain(item.getText()).equals(step)).findFirst().orElse(null);
            if (found == null) {
                return null;
            }
            here = found.getMenu();
        }
        return found;
    }

    @Override
    public void type(String field, String text) {
        begin(field, text);
        window.onWindow(() -> {
            Control focus = window.display().getFocusControl();
            if (focus != null) {
                focus.traverse(SWT.TRAVERSE_TAB_NEXT);
            }
        });
    }

    @Override
    public void begin(String field, String text) {
        var widget = (Text) found(field, one -> one instanceof Text control && control.getEditable());
        await(field + " to be usable", () -> window.onWindow(widget::isEnabled));
        window.onWindow(() -> {
            widget.setFocus();
            widget.notifyListeners(SWT.FocusIn, new Event());
            widget.selectAll();
            if (text.isEmpty()) {
                widget.setText("");
            }
            for (int index = 0; index < text.length(); index++) {
                widget.insert(text.substring(index, index + 1));
            }
        });
    }

    @Override
    public String read(String what) {
        Widget widget = found(what, one -> !Finder.text(one).isEmpty() || what.equals(one.getData("garboard.id")) || one instanceof Text);
        return window.onWindow(() -> Finder.text(widget));
    }

    @Override
    public void choose(String field, String entry) {
        Widget widget = found(field, one -> one instanceof Combo || field.equals(one.getData("garboard.id")));
        if (widget instanceof Combo combo) {
            window.onWindow(() -> {
                int index = Arrays.asList(combo.getItems()).indexOf(entry);
                if (index < 0) {
                    throw new AssertionError(field + " has no entry " + entry + "; it has " + Arrays.toString(combo.getItems()));
                }
                combo.select(index);
                combo.notifyListeners(SWT.Selection, new Event());
            });
        } else {
            // A row of toggles under one name.
            Widget toggle = window.onWindow(() -> toggle(widget, entry));
            later(() -> {
                if (toggle instanceof Button button) {
                    button.setSelection(true);
                }
                toggle.notifyListeners(SWT.Selection, new Event());
            });
        }
    }

    private static Widget toggle(Widget row, String entry) {
        if (row instanceof org.eclipse.swt.widgets.Composite composite) {
            for (Control child : composite.getChildren()) {
                if (child instanceof Button button && Finder.plain(button.getText()).equals(entry)) {
                    return button;
                }
            }
        }
        throw new AssertionError("There is no " + entry + " in " + row);
    }

    @Override
    public void pick(String list, String row) {
        Widget widget = found(list, one -> one instanceof Table || one instanceof Tree);
        await("a row with \"" + row + "\" in " + list, () -> rows(list).stream().anyMatch(text -> text.contains(row)));
        later(() -> Rows.pick(widget, row));
    }

    @Override
    public List<String> rows(String list) {
        Widget widget = found(list, one -> one instanceof Table || one instanceof Tree);
        return window.onWindow(() -> Rows.of(widget));
    }

    @Override
    public void keys(String stroke) {
        later(() -> KeyStrokes.press(window.display(), stroke));
    }

    @Override
    public boolean sees(String text) {
        return window.onWindow(() -> finder.texts().stream().anyMatch(seen -> seen.contains(text)));
    }

    @Override
    public boolean canUse(String what) {
        return window.onWindow(() -> finder.find(what, one -> true).filter(SwtHand::usable).isPresent());
    }

    @Override
    public int letterHeight(String what) {
        Widget widget = found(what, Control.class::isInstance);
        return window.onWindow(() -> {
            var gc = new GC((Control) widget);
            int height = gc.getFontMetrics().getHeight();
            gc.dispose();
            return height;
        });
    }

    @Override
    public void picture(Path file) {
        window.onWindow(() -> {
            Image image = finder.picture();
            var loader = new ImageLoader();
            loader.data = new org.eclipse.swt.graphics.ImageData[] {image.getImageData()};
            loader.save(file.toString(), SWT.IMAGE_PNG);
            image.dispose();
        });
    }

    @Override
    public void await(String what, BooleanSupplier holds) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        var pause = new CountDownLatch(1);
        while (!holds.getAsBoolean()) {
            tellLate();
            if (System.nanoTime() > end) {
                throw new AssertionError("In vain waited for " + what + ". To be seen is: " + window.<List<String>>onWindow(finder::texts));
            }
            glance(pause);
        }
    }

    private static void glance(CountDownLatch never) {
        try {
            never.await(GLANCE_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError("Stopped while waiting", stopped);
        }
    }

    private Widget found(String what, Predicate<Widget> kind) {
        var found = new AtomicReference<Widget>();
        await("\"" + what + "\" to be there", () -> {
            Supplier<Widget> look = () -> finder.find(what, kind).orElse(null);
            found.set(window.onWindow(look));
            return found.get() != null;
        });
        return found.get();
    }

    /** Does something in the window without waiting for the dialogs that it opens. */
    private void later(Runnable task) {
        tellLate();
        var done = new CountDownLatch(1);
        window.display().asyncExec(() -> {
            try {
                task.run();
            } catch (RuntimeException | AssertionError thrown) {
                broken.set(thrown);
            } finally {
                done.countDown();
            }
        });
        try {
            done.await(PRESS_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        tellLate();
    }

    /** What a press did wrong may show only after it was no longer waited for. */
    private void tellLate() {
        Throwable fault = broken.getAndSet(null);
        if (fault != null) {
            throw new AssertionError("What the hand did last went wrong: " + fault, fault);
        }
    }
}
