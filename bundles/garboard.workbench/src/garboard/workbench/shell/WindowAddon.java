// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.util.List;
import java.util.Optional;

import jakarta.inject.Inject;

import org.eclipse.e4.core.commands.ECommandService;
import org.eclipse.e4.core.commands.EHandlerService;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.di.UIEventTopic;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.e4.ui.workbench.UIEvents;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.e4.ui.workbench.modeling.IWindowCloseHandler;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.files.Filing;
import garboard.session.journal.Journal;
import garboard.workbench.Desk;

/** Makes the window follow the desk: the page shown, the title, what can be pressed, the journal; and asks before it closes. */
public final class WindowAddon {

    @Inject
    private Desk desk;
    @Inject
    private MApplication application;
    @Inject
    private EModelService models;
    @Inject
    private Filing filing;
    @Inject
    private Journal journal;
    @Inject
    private Leaving leaving;
    @Inject
    private Stage stage;
    @Inject
    private WindowMemory memory;
    @Inject
    private Notices notices;
    @Inject
    private IEventBroker broker;
    private WindowTitle title;
    private List<Subscription> record = List.of();
    private Pressable pressable = Pressable.NOTHING;

    /** What the state of the commands depends on. */
    private record Pressable(boolean open, boolean unsaved, Optional<String> undo, Optional<String> redo) {
        private static final Pressable NOTHING = new Pressable(false, false, Optional.empty(), Optional.empty());

        private static Pressable of(OpenRecord record) {
            return new Pressable(true, record.unsaved(), record.edits().undoLabel(), record.edits().redoLabel());
        }
    }

    @Inject
    @org.eclipse.e4.core.di.annotations.Optional
    void started(@UIEventTopic(UIEvents.UILifeCycle.APP_STARTUP_COMPLETE) Object event, Display display, IEclipseContext context) {
        MWindow window = application.getChildren().getFirst();
        var shell = (Shell) window.getWidget();
        title = new WindowTitle(window, shell, desk);
        memory.follow(shell);
        window.getContext().set(IWindowCloseHandler.class, closing -> mayClose(shell));
        // The desktop ends the session, or "Quit" in the application menu of macOS.
        display.addListener(SWT.Close, closing -> closing.doit = closing.doit && mayClose(shell));
        display.addListener(SWT.OpenDocument, file -> FileDrop.opened(file.text).ifPresent(filing::open));
        FileDrop.on(shell, filing, () -> notices.say(desk.texts(WindowAddon.class).get("drop.neither")));
        desk.performBy(command -> window.getContext().get(EHandlerService.class)
            .executeHandler(window.getContext().get(ECommandService.class).createCommand(command)));
        desk.onOpen(this::turn);
        turn(desk.open());
        var arguments = (String[]) context.get(IApplicationContext.class).getArguments().get(IApplicationContext.APPLICATION_ARGS);
        FileDrop.opened(arguments).ifPresent(filing::open);
    }

    private boolean mayClose(Shell shell) {
        boolean may = leaving.ask();
        if (may) {
            memory.keep(application, models, shell);
        }
        return may;
    }

    private void turn(Optional<OpenRecord> open) {
        record.forEach(Subscription::close);
        record = open.map(one -> List.of(one.edits().onChange(change -> follow(open)), one.onSaved(saved -> follow(open)))).orElse(List.of());
        open.ifPresentOrElse(one -> journal.follow(one, filing::stamp), journal::rest);
        if (open.isPresent()) {
            stage.showRecord();
        } else {
            stage.showStart();
        }
        follow(open);
    }

    /** After each edit, so nothing is done that need not be. */
    private void follow(Optional<OpenRecord> open) {
        title.show(open);
        Pressable now = open.map(Pressable::of).orElse(Pressable.NOTHING);
        if (!now.equals(pressable)) {
            pressable = now;
            broker.send(UIEvents.REQUEST_ENABLEMENT_UPDATE_TOPIC, UIEvents.ALL_ELEMENT_ID);
        }
    }
}
