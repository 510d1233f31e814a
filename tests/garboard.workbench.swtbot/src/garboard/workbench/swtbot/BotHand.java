// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.swtbot;

import static org.eclipse.swtbot.swt.finder.matchers.WidgetMatcherFactory.widgetOfType;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.Widget;
import org.eclipse.swtbot.swt.finder.SWTBot;
import org.eclipse.swtbot.swt.finder.exceptions.WidgetNotFoundException;
import org.eclipse.swtbot.swt.finder.utils.SWTBotPreferences;
import org.eclipse.swtbot.swt.finder.utils.SWTUtils;
import org.eclipse.swtbot.swt.finder.waits.DefaultCondition;
import org.eclipse.swtbot.swt.finder.widgets.SWTBotButton;
import org.eclipse.swtbot.swt.finder.widgets.SWTBotCheckBox;
import org.eclipse.swtbot.swt.finder.widgets.SWTBotCombo;
import org.eclipse.swtbot.swt.finder.widgets.SWTBotLink;
import org.eclipse.swtbot.swt.finder.widgets.SWTBotTable;
import org.eclipse.swtbot.swt.finder.widgets.SWTBotText;
import org.eclipse.swtbot.swt.finder.widgets.SWTBotToolbarPushButton;
import org.eclipse.swtbot.swt.finder.widgets.SWTBotTree;
import org.eclipse.swtbot.swt.finder.widgets.SWTBotTreeItem;
import org.hamcrest.BaseMatcher;
import org.hamcrest.Description;
import org.hamcrest.Matcher;

import garboard.workbench.scenarios.Hand;
import garboard.workbench.scenarios.Ids;
import garboard.workbench.scenarios.KeyStrokes;
import garboard.workbench.scenarios.Row;
import garboard.workbench.scenarios.WindowUnderTest;

/** A hand that SWTBot moves. */
final class BotHand implements Hand {

    private static final long PATIENCE_MS = 20_000;

    private final WindowUnderTest window;
    private final SWTBot bot = new SWTBot();

    BotHand(WindowUnderTest window) {
        this.window = window;
        SWTBotPreferences.TIMEOUT = PATIENCE_MS;
        SWTBotPreferences.PLAYBACK_DELAY = 0;
        bot.shell(window.onWindow(() -> window.shell().getText())).activate();
    }

    @Override
    public void press(String what) {
        Widget widget = found(what, Widget.class);
        await(what + " to be usable", () -> window.onWindow(() -> usable(widget)));
        switch (widget) {
            case Button button when has(button, SWT.CHECK) -> new SWTBotCheckBox(button).click();
            case Button button when has(button, SWT.PUSH) -> new SWTBotButton(button).click();
            case Link link -> new SWTBotLink(link).click();
            case ToolItem item when has(item, SWT.PUSH) -> new SWTBotToolbarPushButton(item).click();
            default -> select(widget);
        }
    }

    /** Toggles and what is drawn by the program itself: SWTBot has no name for them. */
    private void select(Widget widget) {
        window.display().asyncExec(() -> {
            if (widget instanceof Control control) {
                control.setFocus();
            }
            if (widget instanceof Button button && has(button, SWT.TOGGLE | SWT.RADIO)) {
                button.setSelection(has(button, SWT.RADIO) || !button.getSelection());
            }
            widget.notifyListeners(SWT.Selection, new Event());
        });
        window.onWindow(() -> {
            // What was asked for before this is done.
        });
    }

    private boolean has(Widget widget, int style) {
        return window.<Boolean>onWindow(() -> (widget.getStyle() & style) != 0);
    }

    private static boolean usable(Widget widget) {
        return widget instanceof Control control ? control.isEnabled() : !(widget instanceof ToolItem item) || item.isEnabled();
    }

    @Override
    public void menu(String... path) {
        var menu = bot.menu().menu(path[0]);
        for (String step : Arrays.copyOfRange(path, 1, path.length)) {
            // What asks further has dots behind its name.
            String name = menu.menuItems().stream().filter(item -> plain(item).equals(step)).findFirst().orElse(step);
            menu = menu.menu(name.replace("&", ""));
        }
        menu.click();
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
        var entry = new SWTBotText(found(field, Text.class));
        entry.setFocus();
        window.onWindow(() -> {
            entry.widget.notifyListeners(SWT.FocusIn, new Event());
            entry.widget.selectAll();
            if (text.isEmpty()) {
                entry.widget.setText("");
            }
            text.codePoints().forEach(letter -> entry.widget.insert(Character.toString(letter)));
        });
    }

    @Override
    public String read(String what) {
        Widget widget = found(what, Widget.class);
        return SWTUtils.getText(widget);
    }

    @Override
    public void choose(String field, String entry) {
        Widget widget = found(field, Widget.class);
        if (widget instanceof Combo combo) {
            new SWTBotCombo(combo).setSelection(entry);
            return;
        }
        Button toggle = window.onWindow(() -> Arrays.stream(((Composite) widget).getChildren())
            .filter(child -> child instanceof Button button && plain(button.getText()).equals(entry)).map(Button.class::cast).findFirst()
            .orElseThrow(() -> new WidgetNotFoundException("There is no " + entry + " in " + field)));
        window.display().asyncExec(() -> {
            toggle.setSelection(true);
            toggle.notifyListeners(SWT.Selection, new Event());
        });
        window.onWindow(() -> {
            // Done when this is.
        });
    }

    @Override
    public void pick(String list, String row) {
        await("a row with \"" + row + "\" in " + list, () -> rows(list).stream().anyMatch(text -> text.contains(row)));
        Widget widget = found(list, Widget.class);
        if (widget instanceof Table table) {
            var rows = new SWTBotTable(table);
            List<Integer> numbers = IntStream.range(0, rows.rowCount()).boxed().toList();
            rows.select(Row.named(row, numbers, number -> text(rows, number)).orElseThrow());
        } else {
            Row.named(row, all(new SWTBotTree((Tree) widget).getAllItems()), this::text).orElseThrow().select();
        }
    }

    @Override
    public List<String> rows(String list) {
        Widget widget = found(list, Widget.class);
        var texts = new ArrayList<String>();
        if (widget instanceof Table table) {
            var rows = new SWTBotTable(table);
            for (int index = 0; index < rows.rowCount(); index++) {
                texts.add(text(rows, index));
            }
        } else {
            all(new SWTBotTree((Tree) widget).getAllItems()).forEach(item -> texts.add(text(item)));
        }
        return texts;
    }

    private static String text(SWTBotTable table, int row) {
        var cells = new ArrayList<String>();
        for (int column = 0; column < Math.max(1, table.columnCount()); column++) {
            cells.add(table.getTableItem(row).getText(column));
        }
        return String.join(" | ", cells);
    }

    private String text(SWTBotTreeItem item) {
        int columns = window.onWindow(() -> Math.max(1, item.widget.getParent().getColumnCount()));
        var cells = new ArrayList<String>();
        for (int column = 0; column < columns; column++) {
            cells.add(item.cell(column));
        }
        return String.join(" | ", cells);
    }

    private static List<SWTBotTreeItem> all(SWTBotTreeItem... items) {
        var found = new ArrayList<SWTBotTreeItem>();
        for (SWTBotTreeItem item : items) {
            found.add(item);
            found.addAll(all(item.getItems()));
        }
        return found;
    }

    @Override
    public void keys(String stroke) {
        window.display().asyncExec(() -> KeyStrokes.press(window.display(), stroke));
        window.onWindow(() -> {
            // Done when this is.
        });
    }

    @Override
    public boolean sees(String text) {
        return bot.getFinder().findControls(widgetOfType(Control.class)).stream().filter(control -> window.<Boolean>onWindow(() -> control.isVisible()))
            .anyMatch(control -> SWTUtils.getText(control).contains(text) || control instanceof Table table && rowsContain(table, text));
    }

    private boolean rowsContain(Table table, String text) {
        var rows = new SWTBotTable(table);
        for (int index = 0; index < rows.rowCount(); index++) {
            if (text(rows, index).contains(text)) {
                return true;
            }
        }
        return false;
    }

    @Override
    public boolean canUse(String what) {
        return look(what, Widget.class).filter(widget -> window.onWindow(() -> usable(widget))).isPresent();
    }

    @Override
    public void await(String what, BooleanSupplier holds) {
        bot.waitUntil(new DefaultCondition() {
            @Override
            public boolean test() {
                return holds.getAsBoolean();
            }

            @Override
            public String getFailureMessage() {
                return "In vain waited for " + what;
            }
        }, PATIENCE_MS, 20);
    }

    @Override
    public int letterHeight(String what) {
        Control control = found(what, Control.class);
        return window.onWindow(() -> {
            var gc = new GC(control);
            int height = gc.getFontMetrics().getHeight();
            gc.dispose();
            return height;
        });
    }

    @Override
    public void picture(Path file) {
        SWTUtils.captureScreenshot(file.toString());
    }

    private <W extends Widget> W found(String what, Class<W> type) {
        await("\"" + what + "\" to be there", () -> look(what, type).isPresent());
        return look(what, type).orElseThrow();
    }

    private <W extends Widget> Optional<W> look(String what, Class<W> type) {
        Optional<W> found = bot.getFinder().findControls(withTheId(what)).stream().filter(type::isInstance).map(type::cast).findFirst();
        return found.or(() -> named(what, type));
    }

    private static Matcher<Widget> withTheId(String id) {
        return new BaseMatcher<>() {
            @Override
            public boolean matches(Object item) {
                return Ids.of((Widget) item).filter(id::equals).isPresent();
            }

            @Override
            public void describeTo(Description description) {
                description.appendText("a widget with the id ").appendText(id);
            }
        };
    }

    private <W extends Widget> Optional<W> named(String what, Class<W> type) {
        List<? extends Widget> all = bot.getFinder().findControls(widgetOfType(Widget.class));
        Optional<W> byText = all.stream().filter(type::isInstance).map(type::cast)
            .filter(widget -> !(widget instanceof Label) && (plain(SWTUtils.getText(widget)).equals(what)
                || plain(Optional.ofNullable(SWTUtils.getToolTipText(widget)).orElse("")).equals(what))).findFirst();
        return byText;
    }

    private static String plain(String text) {
        return text.replace("&", "").replaceAll("\t.*$", "").replaceAll("<[^>]*>", "").replaceAll("\\s*\\([^)]*\\)$", "")
            .replaceAll("\\s*(…|\\.\\.\\.)$", "").strip();
    }
}
