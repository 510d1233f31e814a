// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;

import org.eclipse.e4.ui.di.Focus;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

import garboard.report.drawing.View;
import garboard.report.drawing.Words;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.drawing.AttitudeChoice;
import garboard.session.drawing.DrawingState;
import garboard.session.drawing.ViewMemory;
import garboard.workbench.Desk;
import garboard.workbench.look.Palette;
import garboard.workbench.text.Texts;

/** The drawings of the installation below the particulars: what is entered, as it is entered. */
public final class DrawingPart {

    private static final String FIELD = "field:";

    private final ViewMemory views = new ViewMemory();
    private final List<Subscription> subscriptions = new ArrayList<>();
    private final Map<View, ToolItem> switches = new EnumMap<>(View.class);
    private final Listener focusListener = this::fieldFocused;
    @Inject
    private Desk desk;
    @Inject
    private MPart part;
    private Composite area;
    private Words words;
    private Texts.Of texts;
    private DrawingSurface surface;
    private DrawingSpeech speech;
    private AttitudeBar attitudes;
    private ToolItem worst;
    private ToolItem upright;
    private Optional<DrawingState> state = Optional.empty();
    private Optional<Subscription> following = Optional.empty();

    @PostConstruct
    void create(Composite parent) {
        texts = desk.texts(DrawingPart.class);
        words = Words.in(desk.texts().locale());
        views.read(desk.settings().views());
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 2).spacing(4, 3).applyTo(area);
        createHeader();
        surface = new DrawingSurface(area, desk);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(surface.canvas());
        var pointer = new DrawingPointer(surface, desk);
        new DrawingKeys(surface, pointer, desk);
        speech = new DrawingSpeech(surface, desk);
        attitudes = new AttitudeBar(area, texts, desk.palette());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(attitudes.control());
        subscriptions.add(desk.onOpen(this::show));
        subscriptions.add(desk.onGo(this::go));
        subscriptions.add(desk.onLook(verdict -> state.ifPresent(shown -> shown.chooseSubjectOf(verdict))));
        subscriptions.add(desk.onPalette(attitudes::paintIn));
        subscriptions.add(desk.settings().onChange(settings -> surface.outdated()));
        parent.getDisplay().addFilter(SWT.FocusIn, focusListener);
        show(desk.open());
        go(new Desk.Place(desk.stop(), Optional.empty()));
    }

    private void createHeader() {
        var header = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(header);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 0).applyTo(header);
        var bar = new ToolBar(header, SWT.FLAT | SWT.HORIZONTAL);
        bar.setData("garboard.id", "drawing.views");
        for (View view : View.values()) {
            if (view != View.SIDE) {
                new ToolItem(bar, SWT.SEPARATOR);
            }
            var item = new ToolItem(bar, SWT.RADIO);
            item.setText(texts.get("view." + view));
            item.setToolTipText(texts.get("view." + view + ".tip"));
            item.setData("garboard.id", "drawing.view." + view);
            item.addListener(SWT.Selection, event -> {
                if (item.getSelection()) {
                    state.ifPresent(shown -> shown.choose(view));
                    desk.settings().rememberViews(views.written());
                }
            });
            switches.put(view, item);
        }
        var acts = new ToolBar(header, SWT.FLAT | SWT.HORIZONTAL);
        acts.setData("garboard.id", "drawing.acts");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.END, SWT.CENTER).applyTo(acts);
        worst = act(acts, "drawing.worst", "worst", shown -> shown.attitude().worst(shown.arrangement(), shown.chosen()));
        new ToolItem(acts, SWT.SEPARATOR);
        upright = act(acts, "drawing.upright", "upright", shown -> shown.attitude().upright(shown.arrangement().water()));
    }

    private ToolItem act(ToolBar bar, String id, String text, java.util.function.Consumer<DrawingState> press) {
        var item = new ToolItem(bar, SWT.PUSH);
        item.setText(texts.get(text));
        item.setToolTipText(texts.get(text + ".tip"));
        item.setData("garboard.id", id);
        item.addListener(SWT.Selection, event -> state.ifPresent(press));
        return item;
    }

    private void show(Optional<OpenRecord> record) {
        following.ifPresent(Subscription::close);
        state.ifPresent(DrawingState::close);
        state = record.map(open -> new DrawingState(open, words, views));
        following = state.map(shown -> shown.onChange(changed -> follow()));
        state.ifPresent(shown -> shown.goTo(desk.stop()));
        surface.show(state);
        follow();
    }

    /** What cannot be seen is not worked out. */
    private void follow() {
        if (!part.isVisible()) {
            return;
        }
        attitudes.show(state);
        state.ifPresent(shown -> {
            switches.forEach((view, item) -> {
                if (item.getSelection() != (view == shown.view())) {
                    item.setSelection(view == shown.view());
                }
            });
            enable(worst, AttitudeChoice.worstAttitude(shown.arrangement(), shown.chosen()).isPresent());
            enable(upright, shown.attitude().heel() != 0 || shown.attitude().trim() != 0);
        });
        speech.follow();
    }

    private static void enable(ToolItem item, boolean able) {
        if (item.getEnabled() != able) {
            item.setEnabled(able);
        }
    }

    /** Where no drawing is of use, the page has all the room. */
    private void go(Desk.Place place) {
        boolean helps = ViewMemory.helpsAt(place.stop());
        state.ifPresent(shown -> {
            shown.goTo(place.stop());
            place.field().filter(field -> helps).ifPresent(shown::chooseOwnerOf);
        });
        if (part.isVisible() != helps) {
            part.setVisible(helps);
            follow();
        }
    }

    /** Wherever a field has the focus, the part that it belongs to is marked. */
    private void fieldFocused(Event event) {
        if (event.widget != null && event.widget.getData("garboard.id") instanceof String id && id.startsWith(FIELD)) {
            state.ifPresent(shown -> shown.chooseOwnerOf(id.substring(FIELD.length())));
        }
    }

    @Focus
    void focus() {
        surface.canvas().setFocus();
    }

    @PreDestroy
    void end() {
        Display display = area.isDisposed() ? Display.getCurrent() : area.getDisplay();
        if (display != null) {
            display.removeFilter(SWT.FocusIn, focusListener);
        }
        subscriptions.forEach(Subscription::close);
        following.ifPresent(Subscription::close);
        state.ifPresent(DrawingState::close);
    }
}
