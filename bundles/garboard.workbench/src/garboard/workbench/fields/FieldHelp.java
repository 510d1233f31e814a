// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Listener;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.session.Field;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.verdicts.VerdictKey;
import garboard.workbench.Desk;
import garboard.workbench.look.Palette;

/**
 * The foot of a page: what to measure for the field that has the focus, where and with what, and what the checks that read it say. F1 goes
 * there, Escape goes back; a click or Enter on a verdict shows it in full.
 */
public final class FieldHelp {

    private static final int LINES = 3;
    private static final int PAUSE = 120;
    /** The line of the first verdict, below that of the field. */
    private static final int FIRST_VERDICT = 1;

    private final FieldContext context;
    private final Composite page;
    private final Composite area;
    private final StyledText words;
    private Optional<Field> shown = Optional.empty();
    private Optional<Control> asker = Optional.empty();
    private Palette painted;
    private List<StyleRange> said = List.of();
    private List<Verdict> verdicts = List.of();
    private boolean soon;

    /** @param page whose fields are helped with: it and all below it */
    public FieldHelp(Composite parent, OpenRecord record, Desk desk, Composite page) {
        this.context = new FieldContext(record, desk);
        this.page = page;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(new Label(area, SWT.SEPARATOR | SWT.HORIZONTAL));
        words = new StyledText(area, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.MULTI);
        words.setAlwaysShowScrollBars(false);
        words.setMargins(12, 4, 12, 4);
        words.setData("garboard.id", "help");
        GridDataFactory.fillDefaults().grab(true, false).hint(1, LINES * words.getLineHeight() + 8).applyTo(words);
        Listener focus = this::follow;
        page.getDisplay().addFilter(SWT.FocusIn, focus);
        // Not the help event: on some desktops only Ctrl+F1 causes that.
        Listener key = event -> {
            if (event.keyCode == SWT.F1 && event.widget instanceof Control control && isOnPage(control)) {
                event.doit = false;
                words.setFocus();
            }
        };
        page.getDisplay().addFilter(SWT.KeyDown, key);
        List<Subscription> subscriptions = List.of(record.verdicts().onChange(evaluation -> showSoon()), desk.onPalette(palette -> show()));
        area.addDisposeListener(event -> {
            event.display.removeFilter(SWT.FocusIn, focus);
            event.display.removeFilter(SWT.KeyDown, key);
            subscriptions.forEach(Subscription::close);
        });
        words.addListener(SWT.MouseUp, event -> lookAt(words.getOffsetAtPoint(new Point(event.x, event.y))));
        words.addListener(SWT.KeyDown, event -> {
            if (event.character == SWT.CR) {
                lookAt(words.getCaretOffset());
            }
        });
        words.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE) {
                event.doit = false;
                asker.filter(control -> !control.isDisposed()).ifPresent(Control::setFocus);
            } else if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
                event.doit = true;
            }
        });
        show();
    }

    public Control control() {
        return area;
    }

    /** Shows the verdict of a line among the others, where it stands in full. */
    private void lookAt(int offset) {
        if (offset >= 0 && words.getSelectionCount() == 0) {
            int line = words.getLineAtOffset(offset) - FIRST_VERDICT;
            if (line >= 0 && line < verdicts.size()) {
                context.desk().lookAt(VerdictKey.of(verdicts.get(line)));
            }
        }
    }

    private void follow(Event event) {
        if (event.widget instanceof Control control && control != words && isOnPage(control)) {
            for (Control at = control; at != page; at = at.getParent()) {
                if (at.getData(FieldContext.FIELD) instanceof Field field) {
                    asker = Optional.of(control);
                    if (!shown.equals(Optional.of(field))) {
                        shown = Optional.of(field);
                        show();
                        words.setTopPixel(0);
                    }
                    return;
                }
            }
        }
    }

    private boolean isOnPage(Control control) {
        for (Control at = control; at != null; at = at.getParent()) {
            if (at == page) {
                return true;
            }
        }
        return false;
    }

    /** What the checks say follows a letter later: it is read, not watched, and laying out the words takes as long as judging. */
    private void showSoon() {
        if (!soon) {
            soon = true;
            area.getDisplay().timerExec(PAUSE, () -> {
                soon = false;
                if (!area.isDisposed()) {
                    show();
                }
            });
        }
    }

    private void show() {
        if (shown.isPresent() && !area.isVisible()) {
            return;
        }
        Palette palette = context.desk().palette();
        var text = new StringBuilder();
        var styles = new ArrayList<StyleRange>();
        if (shown.isEmpty()) {
            append(text, styles, context.texts().get("help.none"), palette.faint(), SWT.NORMAL);
        }
        shown.ifPresent(field -> {
            append(text, styles, context.name(field), palette.ink(), SWT.BOLD);
            context.desk().labels().how(field.attribute()).ifPresent(how -> append(text, styles, "  " + how, palette.ink(), SWT.NORMAL));
            verdicts(field, text, styles);
        });
        if (!palette.equals(painted)) {
            painted = palette;
            words.setBackground(palette.band());
            words.setForeground(palette.ink());
        }
        if (!words.getText().equals(text.toString())) {
            words.setText(text.toString());
            said = List.of();
        }
        if (!said.equals(styles)) {
            words.setStyleRanges(styles.toArray(StyleRange[]::new));
            said = List.copyOf(styles);
        }
    }

    private void verdicts(Field field, StringBuilder text, List<StyleRange> styles) {
        Palette palette = context.desk().palette();
        List<Verdict> all = context.record().verdicts().byField().concerning(field);
        verdicts = all.stream().filter(verdict -> verdict.standing() != Standing.DOES_NOT_APPLY).toList();
        for (Verdict verdict : verdicts) {
            text.append('\n');
            append(text, styles, context.texts().get("standing." + verdict.standing().name()), palette.of(verdict.standing()), SWT.BOLD);
            append(text, styles, "  " + verdict.check().title() + ": ", palette.ink(), SWT.NORMAL);
            append(text, styles, verdict.sentence(), palette.faint(), SWT.NORMAL);
        }
        if (all.size() > verdicts.size()) {
            text.append('\n');
            append(text, styles, context.texts().get("help.doNotApply", all.size() - verdicts.size()), palette.faint(), SWT.NORMAL);
        }
    }

    private static void append(StringBuilder text, List<StyleRange> styles, String words, Color colour, int style) {
        styles.add(new StyleRange(text.length(), words.length(), colour, null, style));
        text.append(words);
    }
}
